import { useWords } from '../../language/words.ts';
import type { StationId } from '../../model/station.ts';
import { framedBlock } from '../../scene/kiosk/framed-block.ts';
import type { Theme } from '../../style/inks.ts';
import { KioskDrawing } from './kiosk-drawing.tsx';

/** A station's block of the quilt, bound and as large as its place. */
export function BlockPicture({ station, theme }: { readonly station: StationId; readonly theme: Theme }) {
  const { messages } = useWords();
  return (
    <KioskDrawing
      theme={theme}
      alt={messages.stations[station].name}
      of={[station]}
      draw={(width, height) => framedBlock(station, width, height)}
    />
  );
}
