// A Bot API server for tests, over real HTTP on loopback: people write, press and leave; the network misbehaves.
// It keeps what was sent, and refuses what the real one would refuse.

export { type StandIn, startStandIn } from './server.ts';
export type { Message, User } from './world.ts';
