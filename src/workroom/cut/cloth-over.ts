// What is written on a cloth and beside it: marks on pieces, names of what is kept, numbers of strips, its width and its selvages.
// Letters keep their size however closely one looks; what has no room is left out.
import type { ClothUnrolled, Panel, PanelEdge } from '#workroom/compute';
import { ink, type Line, type Over, stroke, type View, white } from '#workroom/drawing';
import type { ClothScene, LaidPanel } from './cloth-scene.ts';

interface Writing {
  readonly to: CanvasRenderingContext2D;
  readonly view: View;
  readonly density: number;
  /** On the page's ground, which the theme decides. */
  readonly soft: string;
}

const sans = '"Source Sans 3", "Segoe UI", sans-serif';
const litLines: readonly Line[] = [
  { width: 4, colour: ink, dash: [] },
  { width: 2, colour: white, dash: [] },
];

/** @param lit place in the cloth's list: all pieces of that size */
export const clothOver = (of: {
  readonly scene: ClothScene;
  readonly cloth: ClothUnrolled;
  readonly lit: ReadonlySet<number>;
  readonly soft: string;
}): Over => ({
  paint: (to, { view, density }) => {
    const { scene, cloth, lit, soft } = of;
    const writing = { to, view, density, soft };
    to.setTransform(density, 0, 0, density, 0, 0);
    to.textAlign = 'center';
    to.textBaseline = 'middle';
    for (const [index, laid] of scene.laid.entries()) {
      writeMarks(writing, laid, cloth);
      writeRemnants(writing, laid);
      writeEdges(writing, laid);
      writeStrips(writing, laid);
      if (index === 0 && cloth.print !== null) drawPrintWay(writing, laid, cloth.print);
    }
    if (lit.size > 0) strokeLit(writing, scene, lit);
  },
});

interface PixelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const pixels = (view: View, { x, y }: LaidPanel, box: readonly [number, number, number, number]): PixelBox => ({
  x: view.x + (x + box[0]) * view.scale,
  y: view.y + (y + box[1]) * view.scale,
  width: box[2] * view.scale,
  height: box[3] * view.scale,
});

const isSeen = ({ canvas }: CanvasRenderingContext2D, density: number, box: PixelBox): boolean =>
  box.x < canvas.width / density && box.y < canvas.height / density && box.x + box.width > 0 && box.y + box.height > 0;

const [mostPx, leastPx] = [14, 8.5];

/** In the middle of a box, at the largest size that has room; upright where it is high and narrow. */
const writeIn = (of: Writing, box: PixelBox, text: string, colour: string): void => {
  const { to, density } = of;
  const isUpright = box.height > 1.6 * box.width;
  const [long, high] = isUpright ? [box.height, box.width] : [box.width, box.height];
  const size = Math.min(mostPx, high - 3, (long - 5) / (0.56 * text.length));
  if (size < leastPx || !isSeen(to, density, box)) return;
  to.fillStyle = colour;
  to.font = `600 ${Math.round(size * 2) / 2}px ${sans}`;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  if (!isUpright) {
    to.fillText(text, x, y);
    return;
  }
  to.save();
  to.translate(x, y);
  to.rotate(-Math.PI / 2);
  to.fillText(text, 0, 0);
  to.restore();
};

const writeMarks = (of: Writing, laid: LaidPanel, cloth: ClothUnrolled): void => {
  for (const { box, of: place } of laid.panel.pieces)
    writeIn(of, pixels(of.view, laid, box), cloth.pieces[place]?.mark ?? '', cloth.ink);
};

const writeRemnants = (of: Writing, laid: LaidPanel): void => {
  for (const { name, box } of laid.panel.remnants) writeIn(of, pixels(of.view, laid, box), name, '#6a6458');
};

const writeStrips = (of: Writing, laid: LaidPanel): void => {
  const { to, view, soft } = of;
  const { panel } = laid;
  let below = Number.NEGATIVE_INFINITY;
  to.font = `600 13px ${sans}`;
  to.fillStyle = soft;
  for (const { at, height, number } of panel.strips) {
    const box = pixels(view, laid, [panel.width, at, 0, height]);
    const y = box.y + box.height / 2;
    // strips too low for a number each
    if (y - below < 12) continue;
    to.fillText(String(number), box.x + 13, y);
    below = y;
  }
};

/** Caption and width above; selvages as a double line, a fold as a dashed one. */
const writeEdges = (of: Writing, laid: LaidPanel): void => {
  const { to, view, soft } = of;
  const { panel } = laid;
  const box = pixels(view, laid, [0, 0, panel.width, panel.length]);
  to.fillStyle = soft;
  to.font = `13px ${sans}`;
  const words = [panel.caption, panel.across].filter((text) => text !== '').join(': ');
  const shown = [words, panel.caption, panel.across].find(
    (text) => text !== '' && to.measureText(text).width < box.width + 24,
  );
  if (shown !== undefined) to.fillText(shown, box.x + box.width / 2, box.y - 12);
  to.strokeStyle = soft;
  to.lineWidth = 1;
  for (const { x, kind } of sidesOf(panel, box)) {
    for (const away of kind === 'fold' ? [3] : [3, 6]) {
      to.setLineDash(kind === 'fold' ? [5, 4] : []);
      to.beginPath();
      const side = x === box.x ? x - away : x + away;
      to.moveTo(side, box.y);
      to.lineTo(side, box.y + box.height);
      to.stroke();
    }
    to.setLineDash([]);
  }
  writeEdge(of, box, panel);
  for (const edge of panel.squaring) {
    const band = pixels(view, laid, edge);
    writeIn(of, { ...band, height: Math.min(band.height, 15) }, 'squaring', '#24211c');
  }
};

const sidesOf = (
  { edges }: Panel,
  { x, width }: PixelBox,
): readonly { readonly x: number; readonly kind: PanelEdge }[] =>
  edges.map((kind, i) => ({ x: x + i * width, kind })).filter(({ kind }) => kind !== 'cut');

/** The left one. */
const writeEdge = ({ to, soft }: Writing, box: PixelBox, { edges: [edge] }: Panel): void => {
  if (edge === 'cut' || box.height < 90) return;
  to.save();
  to.fillStyle = soft;
  to.font = `12px ${sans}`;
  to.translate(box.x - 14, box.y + Math.min(box.height / 2, 120));
  to.rotate(-Math.PI / 2);
  to.fillText(edge, 0, 0);
  to.restore();
};

/** Which way the upright of the print runs: above the cloth's left corner, as it lies. */
const drawPrintWay = (
  { to, view, soft }: Writing,
  laid: LaidPanel,
  print: NonNullable<ClothUnrolled['print']>,
): void => {
  const box = pixels(view, laid, [0, 0, laid.panel.width, 0]);
  const reach = 8;
  const [x, y] = [box.x + reach, box.y - 13];
  const [dx, dy] = print.runs === 'up' ? [0, -reach] : [reach, 0];
  const ends = print.heads === 'both' ? [1, -1] : [1];
  to.strokeStyle = soft;
  to.lineWidth = 1.5;
  to.beginPath();
  to.moveTo(x - dx, y - dy);
  to.lineTo(x + dx, y + dy);
  for (const end of ends) {
    const [tipX, tipY] = [x + end * dx, y + end * dy];
    const [backX, backY] = [tipX - end * dx * 0.6, tipY - end * dy * 0.6];
    to.moveTo(backX + dy * 0.45, backY + dx * 0.45);
    to.lineTo(tipX, tipY);
    to.lineTo(backX - dy * 0.45, backY - dx * 0.45);
  }
  to.stroke();
  to.textAlign = 'left';
  to.fillStyle = soft;
  to.font = `12px ${sans}`;
  to.fillText('print', x + reach + 4, y);
  to.textAlign = 'center';
};

const strokeLit = ({ to, view, density }: Writing, scene: ClothScene, lit: ReadonlySet<number>): void => {
  to.beginPath();
  for (const { of, box } of scene.places.values()) {
    if (!lit.has(of)) continue;
    const [x, y, width, height] = box.map((value) => value * view.scale) as [number, number, number, number];
    if (!isSeen(to, density, { x: view.x + x, y: view.y + y, width, height })) continue;
    to.rect(view.x + x + 1, view.y + y + 1, Math.max(1, width - 2), Math.max(1, height - 2));
  }
  to.lineJoin = 'miter';
  stroke(to, litLines);
};
