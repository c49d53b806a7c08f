import type { Selectable } from 'kysely';
import type { Link, Membership, Role } from './store.ts';
import type { Tables } from './tables.ts';

const ROLES: readonly Role[] = ['designer', 'client', 'viewer'];

/** A role this server does not know gives the least it can. */
function parseRole(role: string): Role {
  return ROLES.find((known) => known === role) ?? 'viewer';
}

export function rowOfLink(link: Link): Tables['links'] {
  return {
    id: link.id,
    board: link.board,
    secret_hash: link.secretHash,
    role: link.role,
    revoked: link.revoked ? 1 : 0,
    ends_at: link.endsAt ?? null,
  };
}

export function linkOfRow(row: Selectable<Tables['links']>): Link {
  return {
    id: row.id,
    board: row.board,
    secretHash: row.secret_hash,
    role: parseRole(row.role),
    revoked: row.revoked !== 0,
    ...(row.ends_at === null ? {} : { endsAt: Number(row.ends_at) }),
  };
}

export function rowOfMembership(membership: Membership): Tables['memberships'] {
  const { tokenHash, ...rest } = membership;
  return { ...rest, token_hash: tokenHash };
}

export function membershipOfRow(row: Selectable<Tables['memberships']>): Membership {
  const { token_hash, ...rest } = row;
  return { ...rest, tokenHash: token_hash };
}
