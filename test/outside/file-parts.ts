// The objects of a PDF file as qpdf lists them: pages, what is drawn on them, outline and tags.

import { said } from './pdf.ts';

export type Value = null | boolean | number | string | readonly Value[] | { readonly [key: string]: Value };
export type Dictionary = { readonly [key: string]: Value };

export interface FileParts {
  /** What "12 0 R" stands for, a stream by its dictionary; another value stands for itself. */
  readonly lookUp: (value: Value | undefined) => Value;
  readonly dictionaryOf: (value: Value | undefined) => Dictionary;
  readonly streamOf: (reference: string) => string;
  /** References, in order. */
  readonly pages: readonly { readonly object: string; readonly contents: readonly string[] }[];
  readonly outline: readonly Bookmark[];
  readonly trailer: Dictionary;
}

export interface Bookmark {
  readonly title: string;
  /** From 1. */
  readonly page: number;
  readonly kids: readonly Bookmark[];
}

interface Listed {
  readonly pages: FileParts['pages'];
  readonly outlines: readonly Outlined[];
  readonly qpdf: readonly [unknown, Readonly<Record<string, ListedObject>>];
}

interface Outlined {
  readonly title: string;
  readonly destpageposfrom1: number;
  readonly kids: readonly Outlined[];
}

interface ListedObject {
  readonly value?: Value;
  readonly stream?: { readonly dict: Dictionary; readonly data: string };
}

export const partsOf = (path: string): FileParts => {
  const options = ['--json=2', '--json-stream-data=inline', '--decode-level=generalized'];
  const { pages, outlines, qpdf } = JSON.parse(said('qpdf', [...options, path])) as Listed;
  const objects = qpdf[1];
  const lookUp = (value: Value | undefined): Value => {
    if (typeof value !== 'string' || !/^\d+ \d+ R$/.test(value)) return value ?? null;
    const object = objects[`obj:${value}`];
    return object?.stream?.dict ?? object?.value ?? null;
  };
  return {
    lookUp,
    dictionaryOf: (value) => {
      const found = lookUp(value);
      return typeof found === 'object' && found !== null && !Array.isArray(found) ? (found as Dictionary) : {};
    },
    streamOf: (reference) => Buffer.from(objects[`obj:${reference}`]?.stream?.data ?? '', 'base64').toString('latin1'),
    pages,
    outline: outlines.map(bookmark),
    trailer: objects.trailer?.value as Dictionary,
  };
};

const bookmark = ({ title, destpageposfrom1, kids }: Outlined): Bookmark => ({
  title,
  page: destpageposfrom1,
  kids: kids.map(bookmark),
});

/** A text as qpdf lists it: "u:Log cabin", or its bytes in "b:…". */
export const textOf = (value: Value | undefined): string => (typeof value === 'string' ? value.replace(/^u:/, '') : '');
