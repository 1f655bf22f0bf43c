// The command line: reads what is wished for, runs it, and turns every end into an exit code.
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { type Chapter, type Hand, patternChapters, usualChapters } from '#paper';
import { type Paper, PressFailure } from '#print';
import { runBlocks } from './blocks-command.ts';
import { runCheck } from './check-command.ts';
import { runDiagnose } from './diagnose-command.ts';
import { runDraw } from './draw-command.ts';
import { runLargest } from './largest-command.ts';
import { runLayout } from './layout-command.ts';
import { runPlan } from './plan-command.ts';
import { runServe } from './serve-command.ts';
import { runSizes } from './sizes-command.ts';
import { exits, NotText, print, type Terminal, WrongUse } from './terminal.ts';
import { runWays } from './ways-command.ts';

/** Runs one command line. @returns 0 done (warnings included), 1 the document has problems, 2 wrong use */
export const main = async (call: { readonly argv: readonly string[] } & Terminal): Promise<number> => {
  const ended = { exit: exits.done as number };
  const program = programFor(call, ended);
  try {
    await program.parseAsync(call.argv, { from: 'user' });
    return ended.exit;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exits.done : exits.wrongUse;
    if (error instanceof WrongUse) {
      await print(call.stderr, error.message);
      return exits.wrongUse;
    }
    if (error instanceof NotText) {
      await print(call.stderr, error.message);
      return exits.problems;
    }
    if (error instanceof PressFailure) {
      await print(
        call.stderr,
        `The pattern could not be printed; this is our fault, not the document's.\n${error.message}`,
      );
      return exits.wrongUse;
    }
    throw error;
  }
};

const paperNamed = (text: string): Paper => {
  const paper = text.toLowerCase();
  if (paper === 'letter' || paper === 'a4') return paper;
  throw new InvalidArgumentError('Allowed choices are letter, a4.');
};

const chapterNames = patternChapters.join(', ');
const chaptersAllowed = `Allowed are all, or some of ${chapterNames}, with commas between.`;
const onRequest = patternChapters.filter((chapter) => !usualChapters.includes(chapter)).join(', ');
const chaptersHelp = `chapters of the pattern, with commas between, or all: ${chapterNames} (else all but ${onRequest})`;

const chaptersNamed = (text: string): readonly Chapter[] => {
  const names = listed(text.toLowerCase());
  if (names === 'all') return patternChapters;
  const known = (name: string): name is Chapter => (patternChapters as readonly string[]).includes(name);
  const wrong = names.filter((name) => !known(name));
  if (wrong.length > 0) throw new InvalidArgumentError(`There is no chapter ${wrong.join(', ')}. ${chaptersAllowed}`);
  if (names.length === 0) throw new InvalidArgumentError(`It names no chapter. ${chaptersAllowed}`);
  return names.filter(known);
};

/** Names with commas between, each once. */
const listed = (text: string): readonly string[] | 'all' => {
  const names = text.split(',').map((name) => name.trim());
  return names.includes('all') ? 'all' : [...new Set(names.filter((name) => name !== ''))];
};

const idsNamed = (text: string): readonly string[] | 'all' => {
  const ids = listed(text);
  if (ids.length === 0) throw new InvalidArgumentError('It names none. Write ids with commas between, or all.');
  return ids;
};

const handoutHelp = 'print a handout for the lesson on each of these blocks: ids with commas between, or all';
const sizesHelp = 'other sizes of the document to print in the same pattern: ids with commas between, or all';

interface PlanOptions {
  readonly out?: string;
  readonly paper: Paper;
  readonly hand: Hand;
  readonly chapters?: readonly Chapter[];
  readonly handout?: readonly string[] | 'all';
  readonly sizes?: readonly string[] | 'all';
  readonly runSheet: boolean;
  readonly json: boolean;
}

interface DrawOptions {
  readonly out?: string;
  readonly as?: 'colour' | 'grey' | 'line';
  readonly width: string;
  readonly size?: string;
  readonly unit: 'in' | 'cm';
}

interface DiagnoseOptions {
  readonly block?: string;
  readonly measured?: string;
  readonly seamTest?: string;
  readonly json: boolean;
}

const programFor = (terminal: Terminal, ended: { exit: number }): Command => {
  const program = new Command('seamstead')
    .description(
      'From one quilt document: cut sizes, a cutting plan, what to buy, the order of sewing, a printed pattern.',
    )
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.stdout.write(text),
      writeErr: (text) => terminal.stderr.write(text),
    })
    .showHelpAfterError('(seamstead --help lists the commands)');
  program
    .command('plan')
    .description('plan a quilt: print a summary, write the plan, the cut list, pictures and the pattern')
    .argument('<file>', 'a quilt document (*.quilt.json), or - for standard input')
    .option('--out <folder>', "folder for the files (else out/NAME, NAME being the document's)")
    .addOption(
      new Option('--paper <size>', 'paper of the pattern: letter or a4').argParser(paperNamed).default('letter'),
    )
    .addOption(
      new Option('--hand <hand>', 'for which cutting is drawn in the pattern and the handouts')
        .choices(['right', 'left'])
        .default('right'),
    )
    .addOption(new Option('--chapters <names>', chaptersHelp).argParser(chaptersNamed))
    .addOption(new Option('--handout <blocks>', handoutHelp).argParser(idsNamed))
    .addOption(new Option('--sizes <ids>', sizesHelp).argParser(idsNamed))
    .option('--run-sheet', "print the educator's run sheet of each block", false)
    .addOption(
      new Option('--json', 'print the plan alone and write nothing')
        .default(false)
        .conflicts(['out', 'hand', 'chapters', 'handout', 'sizes', 'runSheet']),
    )
    .action(async (file: string, options: PlanOptions) => {
      ended.exit = await runPlan(
        {
          file,
          out: options.out ?? null,
          paper: options.paper,
          hand: options.hand,
          chapters: options.chapters ?? null,
          handouts: options.handout ?? [],
          sizes: options.sizes ?? [],
          runSheet: options.runSheet ? 'printed' : 'none',
          json: options.json,
        },
        terminal,
      );
    });
  program
    .command('check')
    .description('list the problems of quilt documents; write nothing')
    .argument('<files...>', 'quilt documents, or - for standard input')
    .action(async (files: readonly string[]) => {
      ended.exit = await runCheck(files, terminal);
    });
  program
    .command('largest')
    .description('the largest quilt of a design that the cloth at hand would make, and what is lacking for the next')
    .argument('<file>', 'a quilt document, or - for standard input')
    .option(
      '--have <cloth=amount>',
      'cloth at hand, once for each piece: oat="2 1/2 yd"; of sheets their number: oat=6; cloths not named are bought',
      (written: string, before: readonly string[]) => [...before, written],
      [] as readonly string[],
    )
    .option('--out <document>', 'write the document of that quilt there')
    .option('--json', 'print the answer as JSON', false)
    .action(async (file: string, options: { have: readonly string[]; out?: string; json: boolean }) => {
      const { have, out = null, json } = options;
      ended.exit = await runLargest({ file, have, out, json }, terminal);
    });
  program
    .command('ways')
    .description('ways to make the units of a quilt that nothing beats at once in cloth, minutes and trueness')
    .argument('<file>', 'a quilt document, or - for standard input')
    .option('--take <number>', 'one of those listed: write the document that chooses it with --out')
    .option('--out <document>', 'where to write it')
    .option('--json', 'print all of them as JSON', false)
    .action(async (file: string, options: { take?: string; out?: string; json: boolean }) => {
      const { take = null, out = null, json } = options;
      ended.exit = await runWays({ file, take, out, json }, terminal);
    });
  program
    .command('diagnose')
    .description(
      'why a block, or the top, comes out the wrong size, from sizes measured after its steps; or what a seam test says',
    )
    .argument('[file]', 'a quilt document, or - for standard input; a seam test does without')
    .option('--block <id>', 'the block that was measured (else the only one), or top')
    .option('--measured <sizes>', 'step: width x height, either may be missing: "1: 3 3/8 x 2 1/2; 4: 4 7/16"')
    .option(
      '--seam-test <sizes>',
      'of three strips sewn side by side: "middle 15/16, total 3 3/8", either may be missing',
    )
    .option('--json', 'print the answer as JSON', false)
    .action(async (file: string | undefined, options: DiagnoseOptions) => {
      const { block = null, measured = null, seamTest = null, json } = options;
      ended.exit = await runDiagnose({ file: file ?? null, block, measured, seamTest, json }, terminal);
    });
  program
    .command('blocks')
    .description('list the collection: ids for "from", names, patches, joining')
    .option('--out <folder>', 'write a picture of each block there, as SVG and PNG')
    .action(async (options: { out?: string }) => {
      ended.exit = await runBlocks(options.out ?? null, terminal);
    });
  program
    .command('draw')
    .description('pictures of a quilt and its blocks, or of a block of the collection, as SVG and PNG')
    .argument('<what>', 'a quilt document, - for standard input, or the id of a block of the collection')
    .option('--out <folder>', 'folder for the pictures (else out/NAME/pictures)')
    .addOption(new Option('--as <look>', 'one look alone (else all three)').choices(['colour', 'grey', 'line']))
    .option('--width <dots>', 'width of each PNG', '1600')
    .option('--size <size>', 'finished side of a block of the collection (else 12 in, 30 cm)')
    .addOption(new Option('--unit <unit>', 'of --size: inches or centimetres').choices(['in', 'cm']).default('in'))
    .action(async (what: string, options: DrawOptions) => {
      const { out = null, as, width, size = null, unit } = options;
      const looks = as === undefined ? (['colour', 'grey', 'line'] as const) : [as];
      ended.exit = await runDraw({ what, out, looks, width, size, unit }, terminal);
    });
  program
    .command('sizes')
    .description('sizes of a block near one at which every cut falls on a mark of the ruler')
    .argument('<block>', 'id in the collection, or with --file in that document')
    .requiredOption('--near <size>', 'finished width, such as 8 or "8 1/2"')
    .addOption(new Option('--unit <unit>', 'inches or centimetres').choices(['in', 'cm']).default('in'))
    .addOption(new Option('--file <file>', 'a document of your own; its unit, seam and ruler hold').conflicts('unit'))
    .action(async (block: string, options: { near: string; unit: 'in' | 'cm'; file?: string }) => {
      const { near, unit, file = null } = options;
      ended.exit = await runSizes({ block, near, unit, file }, terminal);
    });
  program
    .command('layout')
    .description(
      'lay out the pieces of a reference problem: the least cloth or the cheapest sheets, with a proven bound',
    )
    .argument('<instance>', 'an instance (*.json), or - for standard input')
    .option('--problem <id>', 'such as strip2-o, strip3-r or sheets2-o (else the first that the instance lists)')
    .option('--seconds <seconds>', 'how long to look for better layouts', '2')
    .option('--json', 'print the layout as nested cuts, for other programs', false)
    .action(async (file: string, options: { problem?: string; seconds: string; json: boolean }) => {
      const { problem = null, seconds, json } = options;
      ended.exit = await runLayout({ file, problem, seconds, json }, terminal);
    });
  program
    .command('serve')
    .description('open the workroom: draft, set and colour a quilt in the browser')
    .addOption(
      new Option('--port <port>', 'first port to try; the next free one is taken').default(4310).argParser(portNamed),
    )
    .option('--network', 'let other machines of this network in, not this one alone', false)
    .option('--pages <folder>', 'folder of the built workroom (else the one beside this program)')
    .action(async (options: { port: number; network: boolean; pages?: string }) => {
      const { port, network, pages = null } = options;
      ended.exit = await runServe({ port, reach: network ? 'network' : 'this-machine', pages }, terminal);
    });
  return program;
};

const portNamed = (text: string): number => {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : -1;
  if (port >= 0 && port <= 65535) return port;
  throw new InvalidArgumentError('A port is a whole number from 0 to 65535.');
};
