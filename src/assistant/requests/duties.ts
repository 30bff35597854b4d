import type { Request } from '#records';
import type { Draft } from '../draft.ts';

export function duties(_draft: Draft, _request: Request): void {}
