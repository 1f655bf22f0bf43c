// The files of a quilt, made.
import type { DrawnFile, QuiltFile } from '#paper/files';
import { pngOf } from './png.ts';
import type { Paper, Press } from './press.ts';

export interface MadeFile {
  readonly content: string | Uint8Array;
  /** As the press reports them; none in what it does not print. */
  readonly missingSigns: readonly string[];
}

/** Throws PressFailure. */
export const fileMade = async (
  file: QuiltFile,
  { press, paper }: { readonly press: Press; readonly paper: Paper },
): Promise<MadeFile> => {
  if (file.as !== 'pdf') return { content: await fileDrawn(file), missingSigns: [] };
  const { bytes, missingSigns } = await press.pdf(file.pages(), { paper });
  return { content: bytes, missingSigns };
};

/** What needs no press. */
export const fileDrawn = async (file: DrawnFile): Promise<string | Uint8Array> =>
  file.as === 'text' ? file.text() : pngOf(file.svg(), { widthPx: file.widthPx });
