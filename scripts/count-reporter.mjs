// Reporter for node:test: says only what failed, then one plain line, "12 passed, 0 failed".

export default async function* report(events) {
  const count = { passed: 0, failed: 0, skipped: 0 };
  const road = []; // names from the outermost suite to the test at hand
  for await (const { type, data } of events) {
    if (type === 'test:stdout' || type === 'test:stderr') yield data.message;
    if (type === 'test:start') road.splice(data.nesting, road.length, data.name);
    if (type !== 'test:pass' && type !== 'test:fail') continue;
    const outcome = outcomeOf(type, data);
    if (outcome) count[outcome]++;
    if (outcome === 'failed') yield* tell([...road.slice(0, data.nesting), data.name], data);
  }
  const { passed, failed, skipped } = count;
  yield `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`;
}

/** Null for what only holds other tests: a suite is no test, and one that fails through its tests is told by them. */
function outcomeOf(type, { details, skip, todo }) {
  if (skip !== undefined || todo !== undefined) return 'skipped';
  if (type === 'test:fail') return details.error?.failureType === 'subtestsFailed' ? null : 'failed';
  return details.type === 'suite' ? null : 'passed';
}

function* tell(names, { details, file }) {
  const cause = details.error?.cause ?? details.error;
  const said = String(cause?.stack ?? cause);
  const ours = said.split('\n').filter((line) => !/^\s+at .*(node:internal|node:async_hooks)/.test(line));
  yield `\nFAILED ${names.join(' > ')}\n`;
  if (file) yield `  in ${file}\n`;
  yield `${ours.map((line) => `  ${line}`).join('\n')}\n\n`;
}
