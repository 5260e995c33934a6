import type { Check } from './check.ts';
import { millNumberChecks } from './mill-number-checks.ts';
import { millWasteChecks } from './mill-waste-checks.ts';
import { millYarnChecks } from './mill-yarn-checks.ts';

export const millChecks: readonly Check[] = [...millNumberChecks, ...millYarnChecks, ...millWasteChecks];
