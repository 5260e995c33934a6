/**
 * What a loader gives, or null where its package is not installed. Packages that checks are asked of belong to development; the command
 * line also works without them.
 */
export function ifInstalled<Tool>(load: () => Tool): Tool | null {
  try {
    return load();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'MODULE_NOT_FOUND') return null;
    throw error;
  }
}
