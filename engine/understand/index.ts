export { saysCant } from './cant.ts';
export { readCommand } from './command/command.ts';
export { type FieldPart, readField } from './field.ts';
export { type HazardRead, readHazard } from './hazard/hazard.ts';
export { readLabel } from './label/label.ts';
export { readLine } from './line/line.ts';
export { saysNothing } from './line/vocabulary.ts';
export { readPlate, sayPlate } from './plate/plate.ts';
