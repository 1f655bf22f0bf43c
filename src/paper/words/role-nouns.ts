// What the plain pieces of a top are called, one and several.
import type { StripRole } from '#craft/setting';

export const roleNouns: Readonly<Record<StripRole, string>> = {
  sash: 'sash',
  cornerstone: 'cornerstone',
  plain: 'plain piece',
  strip: 'strip',
  fill: 'plain piece',
  'side-triangle': 'side triangle',
  'corner-triangle': 'corner triangle',
  border: 'border',
  spacer: 'spacer strip',
  'border-corner': 'corner square',
};

export const plural = (noun: string): string => (noun.endsWith('sh') ? `${noun}es` : `${noun}s`);
