/** The shelf: every manual that a job may be pinned to. The first is the one that new jobs begin on. */
import type { Manual } from '../engine/vocabulary.ts';
import { noCool } from './no-cool.ts';

export const SHELF: readonly [Manual, ...Manual[]] = [noCool];
