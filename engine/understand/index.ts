export { type CommandRead, readCommand } from './command.ts';
export { type FieldPart, type FieldProblem, type FieldReading, readField } from './field.ts';
export { type HazardRead, readHazard } from './hazard.ts';
export { type LabelReading, readLabel } from './label.ts';
export { type LineReading, readLine } from './line.ts';
