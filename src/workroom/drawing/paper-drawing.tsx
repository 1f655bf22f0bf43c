// A drawing of the printed pages on the screen: the same text of SVG, on paper whatever the theme, as it is cloth and ink that it shows.

export interface PaperDrawingOf {
  /** What it shows stands in it, for those who do not see it. */
  readonly svg: string;
  readonly widthPt: number;
  /** Tells it from the other drawings of the view. */
  readonly label: string;
  /** CSS pixels for a point; where the place is narrower it shrinks, down to a size whose letters can be read, and is then scrolled. */
  readonly pxPerPt?: number;
}

/** Letters of a drawing are 8 points high and more. */
const leastPxPerPt = 1.1;

export const PaperDrawing = ({ svg, widthPt, label, pxPerPt = 1.7 }: PaperDrawingOf) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: where it is wider than its place, keys must be able to scroll it
  <section className="paper-drawing" tabIndex={0} aria-label={label}>
    <div
      style={{ width: Math.round(widthPt * pxPerPt), minWidth: Math.round(widthPt * leastPxPerPt) }}
      // biome-ignore lint/security/noDangerouslySetInnerHtml: the text is of our own drawing, every word in it escaped
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  </section>
);
