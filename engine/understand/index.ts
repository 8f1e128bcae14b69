export { readCommand } from './command.ts';
export { type FieldPart, readField } from './field.ts';
export { type HazardRead, readHazard } from './hazard.ts';
export { readLabel } from './label.ts';
export { readLine } from './line.ts';
