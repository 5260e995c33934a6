import type { Language } from '../../../language/language.ts';
import { bloom as bloomEn } from '../../../language/messages/en/pictures/bloom.ts';
import { boll as bollEn } from '../../../language/messages/en/pictures/boll.ts';
import { field as fieldEn } from '../../../language/messages/en/pictures/field.ts';
import { planting as plantingEn } from '../../../language/messages/en/pictures/planting.ts';
import { bloom as bloomEs } from '../../../language/messages/es/pictures/bloom.ts';
import { boll as bollEs } from '../../../language/messages/es/pictures/boll.ts';
import { field as fieldEs } from '../../../language/messages/es/pictures/field.ts';
import { planting as plantingEs } from '../../../language/messages/es/pictures/planting.ts';

/** The words of the pictures in the field; they come with the page, so that the first view need not carry them. */
export const fieldWords = (language: Language): typeof fieldEn => (language === 'es' ? fieldEs : fieldEn);
export const bloomWords = (language: Language): typeof bloomEn => (language === 'es' ? bloomEs : bloomEn);
export const bollWords = (language: Language): typeof bollEn => (language === 'es' ? bollEs : bollEn);
export const plantingWords = (language: Language): typeof plantingEn => (language === 'es' ? plantingEs : plantingEn);
