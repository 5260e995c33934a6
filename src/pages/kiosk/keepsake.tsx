import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { stationIds } from '../../model/station.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import { Picture } from '../../ui/picture.tsx';
import { hashOf } from '../route.ts';
import { qrSvg } from '../teach/qr-picture.ts';
import { BlockPicture } from './block-picture.tsx';
import type { ScreenProps } from './screen.ts';

/** The address that opens this season on a phone, or '' where phones reach none. */
const seasonAddress = ({ settings, shown }: Pick<ScreenProps, 'settings' | 'shown'>): string => {
  const { scenario, seed } = shown.season;
  if (!settings.phoneAddress) return '';
  return settings.phoneAddress + hashOf({ page: 'season', station: 'planting', query: encodeRun({ scenario, seed }) });
};

/** What a visitor leaves with: a block of the season's quilt, and the season itself on a phone. */
export function Keepsake(props: ScreenProps) {
  const { shown, words, said, theme } = props;
  const address = seasonAddress(props);
  const svg = useMemo(() => (address ? qrSvg(address) : ''), [address]);
  const station = stationIds[shown.season.seed % stationIds.length]!;
  const { keepsake } = said;
  return (
    <div class="kiosk-show" data-kind="keepsake">
      <div class="kiosk-say" aria-live="polite">
        <h1 class="kiosk-loud">{keepsake.head}</h1>
        <p class="kiosk-line">
          {fill(keepsake.text, { station: words.messages.stations[station].name })} {svg ? keepsake.phone : ''}
        </p>
        {svg ? <Picture svg={svg} alt={keepsake.phone} class="kiosk-code" /> : null}
      </div>
      <BlockPicture station={station} theme={theme} />
    </div>
  );
}
