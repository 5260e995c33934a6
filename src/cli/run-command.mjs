import { spawn } from 'node:child_process';
import { root } from './project-root.mjs';

/**
 * Runs a command to its end and keeps what it said.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {Record<string, string>} [extraEnv] added to the environment
 * @returns {Promise<{code: number, output: string, result: string}>} exit code (127 when it cannot be started), both outputs together,
 * and standard output alone
 */
export function runCommand(command, args, extraEnv = {}) {
  return new Promise((resolve) => {
    let output = '';
    let result = '';
    const child = spawn(command, args, {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
      // What is kept is shown later, in a log as well as in a terminal.
      env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0', ...extraEnv },
    });
    const keep = (chunk) => {
      output += chunk;
    };
    child.stdout.setEncoding('utf8').on('data', (chunk) => {
      keep(chunk);
      result += chunk;
    });
    child.stderr.setEncoding('utf8').on('data', keep);
    child.once('error', (error) => resolve({ code: 127, output: error.message, result }));
    child.once('close', (code) => resolve({ code: code ?? 1, output, result }));
  });
}
