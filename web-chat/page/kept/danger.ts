/** Words of danger in what a person typed, as the engine reads them; loaded on demand, because few pages need it. */
import { readHazard } from '../../../engine/index.ts';

export const isDanger = (text: string): boolean => readHazard(text, [])?.level === 'now';
