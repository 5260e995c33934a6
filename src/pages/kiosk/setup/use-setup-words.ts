import type { Language } from '../../../language/language.ts';
import { loadMessages } from '../../../language/load-messages.ts';
import type { kioskSetup } from '../../../language/messages/en/kiosk-setup.ts';
import type { kioskSheet } from '../../../language/messages/en/kiosk-sheet.ts';
import { makeWords, type Words } from '../../../language/words.ts';
import { useLoaded } from '../../lessons/use-loaded.ts';

export type SetupWords = typeof kioskSetup;
export type KioskSheetWords = typeof kioskSheet;

/** The words of whoever installs a kiosk. */
export interface InstallerWords {
  readonly words: Words;
  readonly setup: SetupWords;
  readonly sheet: KioskSheetWords;
}

/** Every word of a language that the installer's pages need. */
export async function loadInstallerWords(language: Language): Promise<InstallerWords> {
  const [messages, { kioskSetup: setup }, { kioskSheet: sheet }] = await Promise.all([
    loadMessages(language),
    ...(language === 'es'
      ? ([
          import('../../../language/messages/es/kiosk-setup.ts'),
          import('../../../language/messages/es/kiosk-sheet.ts'),
        ] as const)
      : ([
          import('../../../language/messages/en/kiosk-setup.ts'),
          import('../../../language/messages/en/kiosk-sheet.ts'),
        ] as const)),
  ]);
  return { words: makeWords(language, 'us', messages), setup, sheet };
}

/** The words, or null until they have come; those of the language before stay until then. */
export const useInstallerWords = (language: Language): InstallerWords | null =>
  useLoaded(() => loadInstallerWords(language), [language]);
