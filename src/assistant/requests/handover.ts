import type { Request } from '#records';
import type { Draft } from '../draft.ts';

export function handover(_draft: Draft, _request: Request): void {}
