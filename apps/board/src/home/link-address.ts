/** A pasted link, checked before the page goes there. */
export type LinkRead =
  | { readonly kind: 'link'; readonly link: string }
  | { readonly kind: 'not-a-link'; readonly why: string };

/**
 * The board link in what was pasted.
 *
 * @param origin  of this page: a link to another server is opened there, by the person
 */
export function readLink(pasted: string, origin: string): LinkRead {
  const url = parsedUrl(pasted.trim(), origin);
  if (!url || !/^\/b\/[a-z0-9-]+$/.test(url.pathname)) {
    return {
      kind: 'not-a-link',
      why: 'That is not the link of a board: it looks like …/b/k3x9…#…, with everything after the #.',
    };
  }
  if (url.origin !== origin) {
    return { kind: 'not-a-link', why: `That board is kept on ${url.host}: open the link in the address line instead.` };
  }
  if (url.hash.length < 2) {
    return { kind: 'not-a-link', why: 'The secret after the # is missing: copy the whole link and paste it again.' };
  }
  return { kind: 'link', link: url.href };
}

function parsedUrl(text: string, origin: string): URL | undefined {
  return text !== '' && URL.canParse(text, origin) ? new URL(text, origin) : undefined;
}
