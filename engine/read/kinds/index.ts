import type { MadeKind } from '../section-syntax.ts';
import { call } from './call.ts';
import { check } from './check.ts';
import { end } from './end.ts';
import { fault } from './fault.ts';
import { stop } from './stop.ts';
import { task } from './task.ts';

/** Every kind of section. */
export const sectionKinds = { check, task, call, end, fault, stop } satisfies Record<MadeKind, unknown>;
