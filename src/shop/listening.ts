// Where the server is found. A port that is taken is passed over, so that two may run on one machine.
import type { FastifyInstance } from 'fastify';

export interface Place {
  /** "localhost": this machine alone; "0.0.0.0": all that can reach it. */
  readonly host: string;
  readonly port: number;
}

/** Ports that are tried, one after another. */
const tries = 20;

/** @returns the port. Throws where none of the next twenty is free. */
export const listenAt = async (server: FastifyInstance, { host, port }: Place): Promise<number> => {
  for (let tried = 0; ; tried++) {
    try {
      await server.listen({ host, port: port === 0 ? 0 : port + tried });
      return addressPort(server);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE' || tried + 1 >= tries) throw error;
    }
  }
};

const addressPort = (server: FastifyInstance): number => {
  const address = server.server.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return address.port;
};
