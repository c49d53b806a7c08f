/** The headers that tell which page a request comes from. */
export interface RequestOrigin {
  readonly origin?: string | undefined;
  readonly host?: string | undefined;
}

/**
 * Whether a request comes from our own page.
 *
 * A browser always says where a POST or a WebSocket comes from; a program without a browser says nothing and holds
 * no one else's cookies, so silence passes.
 *
 * @param publicUrl  where people reach us, when a proxy changes the host
 */
export function isOwnOrigin({ origin, host }: RequestOrigin, publicUrl?: string): boolean {
  if (origin === undefined) return true;
  if (!URL.canParse(origin)) return false;
  const from = new URL(origin);
  if (publicUrl !== undefined && URL.canParse(publicUrl) && from.origin === new URL(publicUrl).origin) return true;
  return host !== undefined && from.host === host.toLowerCase();
}
