import { textPieces } from '../../../lessons/text-pieces.ts';
import { Measure } from './measure.tsx';
import { Num } from './num.tsx';

/** A text of a lesson's head with its numbers written out. */
export function Said({ text }: { readonly text: string }) {
  return (
    <>
      {textPieces(text).map((piece, index) => {
        if (piece.kind === 'text') return piece.text;
        if (piece.kind === 'computed') return <Num key={index} of={piece.id} />;
        if (piece.kind === 'measure') return <Measure key={index} value={piece.value} unit={piece.unit} />;
        return piece.as === undefined ? (
          <Num key={index} fact={piece.name} />
        ) : (
          <Num key={index} fact={piece.name} as={piece.as} />
        );
      })}
    </>
  );
}
