// What the parts of the finish are called.
import type { FinishTopic } from '#workroom/compute';
import type { FinishKey } from './finish-edits.ts';

/** As headings. */
export const topicNames: Readonly<Record<FinishTopic, string>> = {
  borders: 'Borders',
  backing: 'Backing',
  batting: 'Batting',
  quilting: 'Quilting',
  sleeve: 'Hanging sleeve',
  binding: 'Binding',
  label: 'Label',
  bed: 'The bed',
};

/** In the order of the page. */
export const topics: readonly FinishTopic[] = [
  'borders',
  'backing',
  'batting',
  'quilting',
  'sleeve',
  'binding',
  'label',
  'bed',
];

/** In a sentence. */
export const partNames: Readonly<Record<FinishKey, string>> = {
  backing: 'backing',
  batting: 'batting',
  sleeve: 'hanging sleeve',
  binding: 'binding',
  label: 'label',
  bed: 'bed',
};
