import { useWords } from '../../language/words.ts';
import { laterPage } from '../later-page.tsx';
import { Kiosk } from './kiosk.tsx';
import { Unattended } from './unattended.tsx';

const InstallerPage = laterPage(() => import('./setup/installer-page.tsx'));

export interface KioskPageProps {
  /** The part of the address behind #/kiosk/; '' is the kiosk itself. */
  readonly id: string;
}

/** The pages of the kiosk: what stands on the screen all day. */
export default function KioskPage({ id }: KioskPageProps) {
  const { product } = useWords().messages.common;
  if (id === 'setup' || id === 'sheet') return <InstallerPage id={id} />;
  return (
    <Unattended product={product}>
      <Kiosk key={id} />
    </Unattended>
  );
}
