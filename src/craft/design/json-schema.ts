// The form of the document as an open standard, JSON Schema draft 2020-12, for editors and other programs.
// It says less than the reader does: names that must be known and sizes that must agree are not in it.
import { z } from 'zod';
import { quiltDocument } from './document.ts';

/** The published file, byte for byte. */
export const schemaText = (): string => {
  const { $schema, ...schema } = z.toJSONSchema(quiltDocument, { io: 'input', target: 'draft-2020-12' });
  const named = { $schema, title: 'Seamstead quilt document, version 1', ...schema };
  return `${JSON.stringify(named, null, 2)}\n`;
};
