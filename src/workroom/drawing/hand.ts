// A hand in a drawing: where one points at places rather than at things.

export interface HandOf {
  /** What it does, and where it is: read out when the drawing is come to, and when it moves. */
  readonly label: string;
  /** @param scale CSS pixels for one unit of the drawing */
  readonly onTap: (point: readonly [number, number], scale: number) => void;
  /** The pointer is over this point, or has left the drawing. */
  readonly onOver: (point: readonly [number, number] | null, scale: number) => void;
  /** @returns whether the key was for the hand */
  readonly onKey: (key: string) => boolean;
  /** A pointer that is down at a point is drawn on. @returns whether it draws what the hand holds, until it is lifted; else the whole drawing */
  readonly onGrab?: (point: readonly [number, number], scale: number) => boolean;
}
