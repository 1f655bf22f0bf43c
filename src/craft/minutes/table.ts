// The table of minutes: the one place that knows how long hands take for what. Our own estimate throughout, not measured: a shop
// should put in its own figures.

export interface MinutesTable {
  /** To cut one piece. */
  readonly cut: number;
  /** To fold, lay straight and measure off one strip before it is cut into pieces. */
  readonly fold: number;
  /** To lay two parts together and take them up. */
  readonly lay: number;
  /** To begin a chain, however many are fed in one after another, and to cut it apart. */
  readonly chain: number;
  /** To put under the foot, and an inch of seam. */
  readonly seam: number;
  readonly inch: number;
  readonly press: number;
  /** To bring one unit to its size. */
  readonly trim: number;
  /** To pin or nest one place where seams meet across the new one. */
  readonly match: number;
  /** To match, pin and ease one curved seam, besides. */
  readonly curve: number;
  /** To draw one line, and to cut one unit apart along it. */
  readonly draw: number;
  readonly part: number;
  /** To lay, smooth and pin one square foot of top, batting and backing. */
  readonly baste: number;
  /** An inch of quilting by machine, and an inch sewn by hand. */
  readonly quilt: number;
  readonly hand: number;
  /** To begin a lesson: quilt, board and cut pieces are looked at together. */
  readonly begin: number;
  /** To lay out, sew, press and measure one seam before a class and to answer a question; and an inch of that seam. */
  readonly show: number;
  readonly showInch: number;
}

/** In a plain seam laying, sewing and pressing are one minute together. */
export const usualMinutes: MinutesTable = {
  cut: 0.3,
  fold: 1,
  lay: 0.4,
  chain: 0.5,
  seam: 0.1,
  inch: 0.02,
  press: 0.5,
  trim: 0.4,
  match: 0.1,
  curve: 3,
  draw: 0.2,
  part: 0.1,
  baste: 2,
  quilt: 0.05,
  hand: 0.2,
  begin: 5,
  show: 3,
  showInch: 0.1,
};

/** The usual table with what a shop has measured in its place. */
export const minutesWith = (own: Partial<MinutesTable> | undefined): MinutesTable => ({ ...usualMinutes, ...own });
