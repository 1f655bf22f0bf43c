// What a quilt begins from: three cloths and one plain block, or a whole demo.
import type { QuiltDocument } from '#craft/design';
import { blankBlock } from '#workroom/draft';
import type { JsonObject } from '#workroom/editing';

const firstCloths: QuiltDocument['fabrics'] = [
  { id: 'light', name: 'Light', colour: '#efe6d0' },
  { id: 'dark', name: 'Dark', colour: '#2f3c44' },
  { id: 'accent', name: 'Accent', colour: '#b1452f' },
];

export const blankQuilt = (unit: 'in' | 'cm'): JsonObject => {
  const block = { ...blankBlock({ unit, fabrics: firstCloths, blocks: [] }), title: 'First block' };
  const quilt: QuiltDocument = {
    format: 'seamstead-quilt',
    version: 1,
    title: 'New quilt',
    unit,
    fabrics: [...firstCloths],
    blocks: [block],
    top: { set: 'straight', rows: [[{ block: block.id }]] },
  };
  return quilt as unknown as JsonObject;
};

export interface DemoQuilt {
  /** The file's name without its ending. */
  readonly file: string;
  readonly title: string;
  readonly words: string;
}

/** Built with the page from the project's examples. */
export const demoQuilts: readonly DemoQuilt[] = [
  { file: 'harvest-home-throw', title: 'Harvest Home', words: 'A throw of log cabins in a barn raising' },
  { file: 'lantern-lane', title: 'Lantern Lane', words: 'Stars on point, a toothed border' },
  { file: 'twelve-fields', title: 'Twelve Fields', words: 'A sampler in sections' },
  { file: 'heron-hanging', title: 'Heron Hanging', words: 'Log cabins in centimetres' },
  { file: 'kettle-bank', title: 'Kettle Bank', words: 'Pineapples on paper foundations' },
  { file: 'weir-street', title: 'Weir Street', words: 'Strips turning about a square, a partial seam' },
  { file: 'lamp-street', title: 'Lamp Street', words: 'Eight-pointed stars, corners set in' },
  { file: 'ferry-landing', title: 'Ferry Landing', words: 'A class quilt, its units made in eight ways' },
  { file: 'mill-pond', title: 'Mill Pond', words: 'Rings and shells in curved seams' },
];

export const demoText = async (file: string): Promise<string> => {
  const answer = await fetch(`demos/${file}.quilt.json`);
  if (!answer.ok) throw new Error(`the demo ${file} is not there (${answer.status})`);
  return answer.text();
};

/** A name no quilt has yet, without what only a secure page is given. */
export const freshId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(10))].map((byte) => (byte % 36).toString(36)).join('');
