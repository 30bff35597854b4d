// A Bot API server for tests, over real HTTP on loopback: people write, press and leave; the network misbehaves.
// It keeps what was sent, and refuses what the real one would refuse.
export type { Fault } from './faults.ts';
export { type StandIn, startStandIn } from './server.ts';
export type { Chat, Message, Sent, Update, User } from './world.ts';
