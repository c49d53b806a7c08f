/** What the link of a board says: whom to ask, for which board, by which secret. */
export function whereOf(link: string) {
  const { host, pathname, hash } = new URL(link);
  return { address: host, board: pathname.split('/').at(-1) ?? '', secret: hash.slice(1) };
}
