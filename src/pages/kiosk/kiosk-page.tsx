import { useWords } from '../../language/words.ts';
import { Kiosk } from './kiosk.tsx';
import { Unattended } from './unattended.tsx';

export interface KioskPageProps {
  /** The part of the address behind #/kiosk/; '' is the kiosk itself. */
  readonly id: string;
}

/** The pages of the kiosk: what stands on the screen all day. */
export default function KioskPage({ id }: KioskPageProps) {
  const { product } = useWords().messages.common;
  return (
    <Unattended product={product}>
      <Kiosk key={id} />
    </Unattended>
  );
}
