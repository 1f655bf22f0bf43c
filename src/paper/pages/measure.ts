// The grid of the page, in points: one measure for Letter and A4, two columns of steps.

export const measurePt = 480;
export const gutterPt = 20;
export const columnPt = (measurePt - gutterPt) / 2;
/** A picture that fills a page under its heading on Letter, the shorter of the two. */
export const tallestPt = 560;
