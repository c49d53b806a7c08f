import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** 144 bits: never guessed, and short enough for a link that is read aloud by nobody. */
const SECRET_BYTES = 18;

/** Where secrets and ids come from; tests give their own. */
export interface Chance {
  /** Unguessable, in letters that can stand in an address. */
  secret(): string;
  /** In [0, 1). */
  number(): number;
}

/** The machine's own randomness. */
export const machineChance: Chance = {
  secret: () => randomBytes(SECRET_BYTES).toString('base64url'),
  number: () => randomBytes(4).readUInt32BE() / 2 ** 32,
};

/** What is stored of a secret. It needs no salt: a secret of 144 random bits has no dictionary. */
export function hashSecret(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}

/** Whether a secret is the one whose hash was stored, in a time that tells nothing. */
export function isSecretOf(secret: string, hash: string): boolean {
  const given = Buffer.from(hashSecret(secret));
  const stored = Buffer.from(hash);
  return given.length === stored.length && timingSafeEqual(given, stored);
}
