export { type CommandRead, readCommand } from './command.ts';
export { type FieldPart, type FieldProblem, type FieldReading, readField } from './field.ts';
export { type HazardRead, readHazard } from './hazard.ts';
export { readLabel } from './label.ts';
