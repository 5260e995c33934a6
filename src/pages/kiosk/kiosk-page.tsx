import { Kiosk } from './kiosk.tsx';

export interface KioskPageProps {
  /** The part of the address behind #/kiosk/; '' is the kiosk itself. */
  readonly id: string;
}

/** The pages of the kiosk: what stands on the screen all day. */
export default function KioskPage({ id }: KioskPageProps) {
  return <Kiosk key={id} />;
}
