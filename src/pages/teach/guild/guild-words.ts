import type { Language } from '../../../language/language.ts';
import { guild as en } from '../../../language/messages/en/guild.ts';
import { guild as es } from '../../../language/messages/es/guild.ts';

/** The words of the guild evening's talk; they come with its page. */
export type GuildWords = typeof en;
export const guildWords = (language: Language): GuildWords => (language === 'es' ? es : en);
