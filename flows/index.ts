/**
 * The shelf: every manual that a record may be pinned to. Jobs begin on the first; a call that is taken begins on the first
 * one for callers.
 */
import type { Manual } from '../engine/vocabulary.ts';
import { intake } from './intake/manual.ts';
import { noCool } from './no-cool.ts';

export const SHELF: readonly [Manual, ...Manual[]] = [noCool, intake];
