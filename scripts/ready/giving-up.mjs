// The end of a run that cannot go on: what went wrong, in words and without a stack, which helps nobody here.

export function giveUp(error) {
  console.error(error.message);
  process.exit(1);
}
