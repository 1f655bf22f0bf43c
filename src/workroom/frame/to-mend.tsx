// In the place of a small picture that cannot be drawn yet.
export const ToMend = () => (
  <span className="to-mend">
    <span className="problem-mark" aria-hidden="true">
      ◆
    </span>
    still to mend
  </span>
);
