/** POST /api/boards: a fresh board, empty or holding an imported plan. */
export interface CreateBoardRequest {
  /** A plan as a board file holds it; parsed by the server before anything is kept. */
  readonly plan?: unknown;
  readonly name?: string;
}

export interface CreateBoardAnswer {
  readonly board: string;
  /** Address of the page with the link's secret in its fragment, e.g. `/b/k3x…#…`. */
  readonly link: string;
}

/** POST /api/boards/:board/enter: exchanges a link's secret for a cookie. */
export interface EnterRequest {
  readonly secret: string;
  /** How the others shall see this person. */
  readonly name: string;
}

export type Role = 'designer';

export interface EnterAnswer {
  readonly board: string;
  readonly membership: string;
  /** Raised when a local copy kept under an older one must not be used again. */
  readonly epoch: number;
  readonly role: Role;
  readonly name: string;
  /** Index of one of eight inks. */
  readonly ink: number;
}

/** POST /api/boards/:board/blobs: keeps an image under its hash. */
export interface BlobAnswer {
  /** SHA-256, hex. */
  readonly hash: string;
}

/** GET /api/boards/:board/blobs/:hash/held: asked before a large image is sent again. */
export interface HeldAnswer {
  readonly held: boolean;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isWords = (value: unknown, most: number): value is string => typeof value === 'string' && value.length <= most;

/** An untrusted body as a request to create a board. */
export function parseCreateBoard(body: unknown): CreateBoardRequest | undefined {
  if (body === undefined || body === null) return {};
  if (!isObject(body)) return undefined;
  const { plan, name } = body;
  if (name !== undefined && !isWords(name, 200)) return undefined;
  return { ...(plan === undefined ? {} : { plan }), ...(name === undefined ? {} : { name }) };
}

/** An untrusted body as a request to enter. The name may be blank: the server then gives one. */
export function parseEnter(body: unknown): EnterRequest | undefined {
  if (!isObject(body)) return undefined;
  const { secret, name = '' } = body;
  if (!isWords(secret, 200) || secret === '' || !isWords(name, 200)) return undefined;
  return { secret, name };
}

/** An untrusted answer of the server as the page takes it. */
export function parseEnterAnswer(body: unknown): EnterAnswer | undefined {
  if (!isObject(body)) return undefined;
  const { board, membership, epoch, role, name, ink } = body;
  if (!isWords(board, 64) || !isWords(membership, 64) || !isWords(name, 200)) return undefined;
  if (role !== 'designer' || typeof epoch !== 'number' || typeof ink !== 'number') return undefined;
  if (!Number.isSafeInteger(epoch) || !Number.isSafeInteger(ink)) return undefined;
  return { board, membership, epoch, role, name, ink };
}

/** An untrusted answer to creating a board. */
export function parseCreateBoardAnswer(body: unknown): CreateBoardAnswer | undefined {
  if (!isObject(body)) return undefined;
  const { board, link } = body;
  return isWords(board, 64) && isWords(link, 400) ? { board, link } : undefined;
}

/** An untrusted answer to sending an image. */
export function parseBlobAnswer(body: unknown): BlobAnswer | undefined {
  if (!isObject(body)) return undefined;
  const { hash } = body;
  return isWords(hash, 64) && /^[0-9a-f]{64}$/.test(hash) ? { hash } : undefined;
}

/** Whether an untrusted answer says that the board holds an image already. */
export function saysHeld(body: unknown): boolean {
  return isObject(body) && body.held === true;
}
