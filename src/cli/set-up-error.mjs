/** Something a person must put right before the command can go on. Its message is one line and is shown without a stack. */
export class SetUpError extends Error {}

const diskWords = {
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
};

/** The one line for an error, or undefined when it is a fault of the program. */
function lineFor(error) {
  if (error instanceof SetUpError) return error.message;
  const words = diskWords[error.code];
  return words && error.path ? `${error.path}: ${words}; a writable folder is needed` : undefined;
}

/**
 * Runs a command's main function: one line on standard error and exit code 2 where a person must put something right.
 * @param {() => Promise<void>} main
 */
export async function runMain(main) {
  try {
    await main();
  } catch (error) {
    const line = lineFor(error);
    if (line === undefined) throw error;
    process.stderr.write(`seamfield: ${line}\n`);
    process.exitCode = 2;
  }
}
