import type { ClothFinish } from '../../../model/cloth/facts.ts';
import type { ClothLook } from './cut-patch.ts';

/** What finished cloth looks like: grey with its wax, scoured, bleached white, or printed. */
export function clothInks(finish: ClothFinish): ClothLook {
  switch (finish) {
    case 'grey':
      return { ink: 'calico', printed: false };
    case 'scoured':
      return { ink: 'muslin', printed: false };
    case 'printed':
      return { ink: 'blush', printed: true };
    default:
      return { ink: 'lint', printed: false };
  }
}
