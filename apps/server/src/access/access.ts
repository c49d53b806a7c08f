import { makeId } from '@loopwright/model';
import type { Clock } from '../clock.ts';
import type { Link, Membership, Role, Store } from '../storage/store.ts';
import type { HeldToken } from './cookies.ts';
import { type Chance, hashSecret, isSecretOf } from './secrets.ts';

/** Inks that tell people apart on the plan. */
const INKS = 8;

/** Why somebody is not let in. */
export type NoEntry = 'no-such-board' | 'wrong-link' | 'link-revoked' | 'link-ended';

/** Somebody who was let in. */
export interface Admitted {
  readonly membership: Membership;
  readonly role: Role;
  readonly link: Link;
}

export type EnterResult =
  | (Admitted & {
      readonly kind: 'entered';
      /** For a new cookie; absent when the browser's own still serves. */
      readonly token?: string;
    })
  | { readonly kind: 'refused'; readonly why: NoEntry };

export type AdmitResult =
  | (Admitted & { readonly kind: 'admitted' })
  | { readonly kind: 'refused'; readonly why: NoEntry };

export interface EnterRequest {
  readonly board: string;
  /** From the link's fragment; empty when the browser relies on its cookie. */
  readonly secret: string;
  readonly name: string;
  /** What the browser's cookies hold for this board. */
  readonly held: readonly HeldToken[];
}

/** Who may come in, and as whom. There are no open boards. */
export interface Access {
  /** Exchanges a link's secret for a membership, or finds the one this browser has. */
  enter(request: EnterRequest): Promise<EnterResult>;
  /** Proves a membership by its token. */
  admit(board: string, held: HeldToken): Promise<AdmitResult>;
  /** A fresh link for a board; its secret is shown once and never stored. */
  makeLink(board: string, role: Role, endsAt?: number): { readonly link: Link; readonly secret: string };
  /** A fresh id, e.g. of a board. */
  makeId(prefix: string): string;
}

export interface AccessPorts {
  readonly store: Store;
  readonly clock: Clock;
  readonly chance: Chance;
}

/** Access by links and cookies, over the store. */
export function openAccess({ store, clock, chance }: AccessPorts): Access {
  const freshId = (prefix: string) => makeId(prefix, chance.number);

  const admit = async (board: string, held: HeldToken): Promise<AdmitResult> => {
    const membership = await store.membership(held.membership);
    if (!membership || membership.board !== board || !isSecretOf(held.token, membership.tokenHash))
      return { kind: 'refused', why: 'wrong-link' };
    const link = await store.link(membership.link);
    const why = link ? closedLink(link, clock.now()) : 'wrong-link';
    if (!link || why) return { kind: 'refused', why: why ?? 'wrong-link' };
    return { kind: 'admitted', membership, role: link.role, link };
  };

  const join = async (link: Link, name: string): Promise<EnterResult> => {
    const token = chance.secret();
    const membership: Membership = {
      id: freshId('m'),
      board: link.board,
      link: link.id,
      tokenHash: hashSecret(token),
      name: name === '' ? 'Guest' : name,
      ink: (await store.countMemberships(link.board)) % INKS,
      epoch: 1,
    };
    await store.addMembership(membership);
    return { kind: 'entered', membership, role: link.role, link, token };
  };

  return {
    admit,
    makeId: freshId,
    makeLink(board, role, endsAt) {
      const secret = chance.secret();
      const link = { id: freshId('l'), board, secretHash: hashSecret(secret), role, revoked: false };
      return { link: endsAt === undefined ? link : { ...link, endsAt }, secret };
    },
    async enter({ board, secret, name, held }) {
      if (!(await store.board(board))) return { kind: 'refused', why: 'no-such-board' };
      const link = secret === '' ? undefined : await store.linkOf(board, hashSecret(secret));
      if (secret !== '' && !link) return { kind: 'refused', why: 'wrong-link' };
      const why = link && closedLink(link, clock.now());
      if (why) return { kind: 'refused', why };
      const known = await heldMembership({ board, name, held, link, admit });
      if (known?.kind === 'admitted') return { ...known, kind: 'entered' };
      if (link) return join(link, name);
      return known ?? { kind: 'refused', why: 'wrong-link' };
    },
  };
}

/** Why a link opens nothing any more, if so. */
export function closedLink(link: Link, now: number): 'link-revoked' | 'link-ended' | undefined {
  if (link.revoked) return 'link-revoked';
  if (link.endsAt !== undefined && link.endsAt <= now) return 'link-ended';
  return undefined;
}

interface HeldSearch {
  readonly board: string;
  readonly name: string;
  readonly held: readonly HeldToken[];
  /** Absent when the browser brought no secret. */
  readonly link: Link | undefined;
  readonly admit: Access['admit'];
}

/**
 * The membership this browser already has through the same link, under the same name or none given.
 *
 * Another name on the same machine is another person; another link is another membership, so that opening a client's
 * link does not demote the designer's tab.
 */
async function heldMembership({ board, name, held, link, admit }: HeldSearch): Promise<AdmitResult | undefined> {
  let refusal: AdmitResult | undefined;
  for (const token of held) {
    const result = await admit(board, token);
    if (result.kind === 'refused') {
      refusal = result;
      continue;
    }
    const sameLink = link === undefined || result.link.id === link.id;
    if (sameLink && (name === '' || name === result.membership.name)) return result;
  }
  return refusal;
}
