// What a quilt begins from: three cloths and one plain block, or a whole demo.
import type { JsonObject } from '#workroom/editing';

export const blankQuilt = (unit: 'in' | 'cm'): JsonObject => ({
  format: 'seamstead-quilt',
  version: 1,
  title: 'New quilt',
  unit,
  fabrics: [
    { id: 'light', name: 'Light', colour: '#efe6d0' },
    { id: 'dark', name: 'Dark', colour: '#2f3c44' },
    { id: 'accent', name: 'Accent', colour: '#b1452f' },
  ],
  blocks: [
    {
      id: 'block',
      title: 'First block',
      size: unit === 'in' ? '8' : '24',
      patches: {
        grid: [8, 8],
        list: [
          {
            points: [
              [0, 0],
              [8, 0],
              [8, 8],
              [0, 8],
            ],
            tone: 'light',
          },
        ],
      },
    },
  ],
  top: { set: 'straight', rows: [[{ block: 'block' }]] },
});

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
];

export const demoText = async (file: string): Promise<string> => {
  const answer = await fetch(`demos/${file}.quilt.json`);
  if (!answer.ok) throw new Error(`the demo ${file} is not there (${answer.status})`);
  return answer.text();
};

/** A name no quilt has yet, without what only a secure page is given. */
export const freshId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(10))].map((byte) => (byte % 36).toString(36)).join('');
