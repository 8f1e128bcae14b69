/** The process of the terminal: the streams it was started with, and its exit code. */
import { EXIT } from './options.ts';
import { runTerminal } from './run.ts';

const { stdin: input, stdout: output, stderr: errors } = process;
const tty = input.isTTY && output.isTTY;

// Whoever read the output has gone; every reply that was answered is on the disk.
output.on('error', () => process.exit(EXIT.ended));
const colour = tty && (process.env.NO_COLOR ?? '') === '';
process.exitCode = await runTerminal(process.argv.slice(2), { input, output, errors, tty, colour });
// A read that still waits would keep the process.
input.destroy();
