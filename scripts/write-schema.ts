// Writes the published JSON Schema of the quilt document from the one that the reader uses.
//
//   npm run schema

import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { schemaText } from '#craft/design';

const file = fileURLToPath(new URL('../schema/seamstead-quilt-1.schema.json', import.meta.url));
writeFileSync(file, schemaText());
console.log(`wrote ${file}`);
