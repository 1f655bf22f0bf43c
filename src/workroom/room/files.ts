// Files in and out, by the plain means that every browser has.
import type { JsonObject } from '#workroom/editing';

export const saveFile = (name: string, content: Blob): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // the download has begun; a minute is ample for the browser to take it over
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
};

export const documentFile = (document: JsonObject): { readonly name: string; readonly content: Blob } => ({
  name: `${fileName(document.title)}.quilt.json`,
  content: new Blob([`${JSON.stringify(document, null, 2)}\n`], { type: 'application/json' }),
});

/** Letters and figures of any script stay; what a file system may refuse becomes a hyphen. */
export const fileName = (title: unknown): string => {
  const name = (typeof title === 'string' ? title : '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return name === '' ? 'quilt' : name;
};
