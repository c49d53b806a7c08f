import { resolve } from 'node:path';

/** What the server is told from outside. */
export interface Environment {
  readonly port: number;
  readonly host: string;
  readonly dataDirectory: string;
  readonly publicUrl?: string;
}

export type ReadEnvironment =
  | { readonly kind: 'environment'; readonly environment: Environment }
  /** One sentence with what to do. */
  | { readonly kind: 'unusable'; readonly why: string };

const DEFAULT_PORT = 8480;

/** PORT, HOST, DATA_DIR and PUBLIC_URL, each with its default. */
export function readEnvironment(variables: Readonly<Record<string, string | undefined>>): ReadEnvironment {
  const port = variables.PORT ? Number(variables.PORT) : DEFAULT_PORT;
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    return { kind: 'unusable', why: `PORT has to be a number from 0 to 65535, and it is '${variables.PORT}'.` };
  const publicUrl = variables.PUBLIC_URL?.replace(/\/+$/, '');
  if (publicUrl && (!URL.canParse(publicUrl) || !/^https?:/.test(publicUrl)))
    return {
      kind: 'unusable',
      why: `PUBLIC_URL has to be an address such as https://boards.example.org, and it is '${publicUrl}'.`,
    };
  return {
    kind: 'environment',
    environment: {
      port,
      host: variables.HOST || '0.0.0.0',
      dataDirectory: resolve(variables.DATA_DIR || 'data'),
      ...(publicUrl ? { publicUrl } : {}),
    },
  };
}
