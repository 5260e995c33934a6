import { spawnSync } from 'node:child_process';

/**
 * Asks GNU units for a conversion. Strict: a reciprocal counts as a mistake.
 * @param program where the program is, or its name on the path
 * @returns how many of `to` make `from`; NaN where the program cannot convert; null where it is not installed
 */
export function askUnits(from: string, to: string, program = 'units'): number | null {
  const { error, status, stdout } = spawnSync(program, ['--terse', '--strict', '--output-format', '%.14g', from, to], {
    encoding: 'utf8',
    // A file of someone's own units, or another way to write numbers, would change the answer.
    env: { ...process.env, LC_ALL: 'C', MYUNITSFILE: '/dev/null' },
  });
  if ((error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT') return null;
  if (error) throw error;
  return status === 0 ? Number.parseFloat(stdout) : Number.NaN;
}
