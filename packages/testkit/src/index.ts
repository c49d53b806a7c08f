export type { Authorship } from './authorship.ts';
export { openAuthorship } from './authorship.ts';
export { differing, lostOrDoubled } from './invariants.ts';
export type { Link, Network, NetworkParts, ServerEnd, ServerMember } from './network.ts';
export { openNetwork } from './network.ts';
export type { Peer, PeerParts } from './peer.ts';
export { openPeer } from './peer.ts';
export { pick, randomEdit } from './random-edit.ts';
export { ROGUE_GREETING, rogueFrame } from './rogue.ts';
