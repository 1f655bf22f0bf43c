// The server: the workroom's files, and printing. Nothing is kept here yet; a maker's quilts stay in her browser.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { limits } from '#craft/limits';
import type { Outcome } from '#ground/outcome';
import { openPress } from '#print';
import { openSolver } from '#solver';
import {
  filesPath,
  type PrintedPage,
  pagePath,
  pagesPath,
  pageWishesIn,
  printWishesIn,
  type Query,
  refusalOf,
  type WishProblem,
} from '#wire';
import { cacheFor, headers } from './headers.ts';
import { type Made, openPrintShop, type Refused } from './printing.ts';
import { turns } from './turns.ts';

export interface ShopWishes {
  /** Folder of the built workroom. */
  readonly pages: string;
}

/** Ready to listen; closing it closes the press. Throws where the folder holds no page. */
export const makeShop = async ({ pages }: ShopWishes): Promise<FastifyInstance> => {
  if (!existsSync(join(pages, 'index.html'))) {
    throw new Error(`There is no workroom in ${pages}. npm run build makes it.`);
  }
  // other commands of the same program wait for none of this
  const [{ default: fastify }, { default: files }] = await Promise.all([import('fastify'), import('@fastify/static')]);
  const press = openPress();
  const shop = openPrintShop({ press, solver: await openSolver() });
  const inTurn = turns();
  // four bytes a character at most
  const server = fastify({ logger: false, bodyLimit: 4 * limits.characters, forceCloseConnections: true });
  server.addHook('onClose', async () => press.close());
  server.addHook('onSend', async (_request, reply) => {
    reply.headers(headers);
  });
  // the document's reader judges the text itself, by its own limits and in its own words
  server.removeAllContentTypeParsers();
  server.addContentTypeParser('application/json', { parseAs: 'string' }, (_request, body, done) => done(null, body));
  server.setErrorHandler(answerFault);
  await server.register(files, {
    root: pages,
    preCompressed: true,
    cacheControl: false,
    setHeaders: (reply, path) => void reply.header('cache-control', cacheFor(path)),
  });
  const orderOf = (request: PrintRequest) => ({ text: String(request.body ?? ''), name: request.params.name });
  const answer = async <W>(of: {
    readonly reply: FastifyReply;
    readonly wishes: Outcome<W, WishProblem>;
    readonly make: (wishes: W) => Promise<Made | Refused>;
  }) => {
    const { reply, wishes, make } = of;
    if (!wishes.ok) return reply.code(400).send(refusalOf(...wishes.problems.map(wishText)));
    const made = await inTurn(
      () => !reply.raw.destroyed,
      () => make(wishes.value),
    );
    if (made === null) return reply.hijack(); // nobody waits for it any more
    if ('refusal' in made) return reply.code(made.status).send(made.refusal);
    const { content, type } = made;
    return reply.type(type).send(content instanceof Uint8Array ? Buffer.from(content) : content);
  };
  server.post<PrintRoute>(`${filesPath}:name`, (request, reply) => {
    const wishes = printWishesIn(request.query);
    return answer({ reply, wishes, make: (of) => shop.file({ ...orderOf(request), wishes: of }) });
  });
  server.post<PrintRoute>(`${pagesPath}:name`, (request, reply) => {
    const wishes = printWishesIn(request.query);
    return answer({ reply, wishes, make: (of) => shop.pages({ ...orderOf(request), wishes: of }) });
  });
  server.post<PrintRoute>(`${pagePath}:name`, (request, reply) => {
    const wishes = pageWishesIn(request.query);
    const make = ({ print, page }: PrintedPage) => shop.page({ ...orderOf(request), wishes: print }, page);
    return answer({ reply, wishes, make });
  });
  server.setNotFoundHandler((request, reply) =>
    reply
      .code(404)
      .send(refusalOf({ where: request.url, what: 'There is nothing at this address.', mend: 'Go to /.' })),
  );
  return server;
};

interface PrintRoute {
  Params: { readonly name: string };
  Querystring: Query;
}
type PrintRequest = FastifyRequest<PrintRoute>;

const wishText = ({ key, found, allowed }: WishProblem) => ({
  where: key,
  what: `${key} says ${found}, which cannot be read.`,
  mend: `It may say ${allowed}.`,
});

/** The maker's mistakes are told; ours are said to be ours, and written where we see them. */
const answerFault = (error: FastifyError, request: FastifyRequest, reply: FastifyReply) => {
  const where = request.url;
  switch (error.statusCode) {
    case 413: {
      const mend = 'Send a shorter document.';
      return reply
        .code(413)
        .send(refusalOf({ where, what: `The document is longer than ${limits.characters} characters.`, mend }));
    }
    case 415:
      return reply
        .code(415)
        .send(refusalOf({ where, what: 'This is no JSON.', mend: 'Send the document as application/json.' }));
    default: {
      if (error.statusCode !== undefined && error.statusCode < 500) {
        return reply
          .code(error.statusCode)
          .send(refusalOf({ where, what: error.message, mend: 'Ask in another way.' }));
      }
      console.error(error);
      const what = 'The pattern could not be made: a fault of this program, not of the document.';
      return reply.code(500).send(refusalOf({ where, what, mend: 'Keep the document as a file, and report it.' }));
    }
  }
};
