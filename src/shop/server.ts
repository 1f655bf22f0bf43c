// The server: the workroom's files, and printing. Nothing is kept here yet; a maker's quilts stay in her browser.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { limits } from '#craft/limits';
import { openPress } from '#print';
import { openSolver } from '#solver';
import { isRefusal, type PrintPaper, pagesPath, paperKey, patternPath, printPapers, type Refusal } from '#wire';
import { cacheFor, headers } from './headers.ts';
import { type PrintOrder, type PrintShop, picturePages, printPattern } from './printing.ts';

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
  const shop: PrintShop = { press: openPress(), solver: await openSolver() };
  // four bytes a character at most
  const server = fastify({ logger: false, bodyLimit: 4 * limits.characters, forceCloseConnections: true });
  server.addHook('onClose', async () => shop.press.close());
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
  server.post(patternPath, (request, reply) =>
    answer({ request, reply, type: 'application/pdf', make: (order) => printPattern(shop, order) }),
  );
  server.post(pagesPath, (request, reply) =>
    answer({ request, reply, type: 'application/json', make: (order) => picturePages(shop, order) }),
  );
  server.setNotFoundHandler((request, reply) =>
    reply.code(404).send(refusal({ where: request.url, what: 'There is nothing at this address.', mend: 'Go to /.' })),
  );
  return server;
};

const answer = async (of: {
  readonly request: FastifyRequest;
  readonly reply: FastifyReply;
  readonly type: string;
  readonly make: (order: PrintOrder) => Promise<Uint8Array | object>;
}) => {
  const { request, reply, type, make } = of;
  const paper = paperIn(request.query);
  if (paper === null) {
    const mend = `Write ?${paperKey}=${printPapers.join(` or ?${paperKey}=`)}.`;
    return reply.code(400).send(refusal({ where: paperKey, what: 'This paper is not known.', mend }));
  }
  const made = await make({ text: String(request.body ?? ''), paper });
  if (isRefusal(made)) return reply.code(422).send(made);
  return reply.type(type).send(made instanceof Uint8Array ? Buffer.from(made) : made);
};

const paperIn = (query: unknown): PrintPaper | null => {
  const wanted = (query as Readonly<Record<string, unknown>>)[paperKey] ?? 'letter';
  return printPapers.find((paper) => paper === wanted) ?? null;
};

const refusal = (problem: Refusal['problems'][number]): Refusal => ({ problems: [problem], more: 0 });

/** The maker's mistakes are told; ours are said to be ours, and written where we see them. */
const answerFault = (error: FastifyError, request: FastifyRequest, reply: FastifyReply) => {
  const where = request.url;
  switch (error.statusCode) {
    case 413: {
      const mend = 'Send a shorter document.';
      return reply
        .code(413)
        .send(refusal({ where, what: `The document is longer than ${limits.characters} characters.`, mend }));
    }
    case 415:
      return reply
        .code(415)
        .send(refusal({ where, what: 'This is no JSON.', mend: 'Send the document as application/json.' }));
    default: {
      if (error.statusCode !== undefined && error.statusCode < 500) {
        return reply.code(error.statusCode).send(refusal({ where, what: error.message, mend: 'Ask in another way.' }));
      }
      console.error(error);
      const what = 'The pattern could not be made: a fault of this program, not of the document.';
      return reply.code(500).send(refusal({ where, what, mend: 'Keep the document as a file, and report it.' }));
    }
  }
};
