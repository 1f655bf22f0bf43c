// For `npm run fuzz`: hands every test a fast-check that tries at least SEAMSTEAD_RUNS cases, whatever number and seed the
// test itself asks for in a check.

import { register } from 'node:module';

const stands = new URL('./fuzzed.mjs', import.meta.url).href;
const hook = `export const resolve = (specifier, context, next) =>
  specifier === 'fast-check' && context.parentURL !== ${JSON.stringify(stands)}
    ? { url: ${JSON.stringify(stands)}, shortCircuit: true }
    : next(specifier, context);`;
register(`data:text/javascript,${encodeURIComponent(hook)}`);
