import { useEffect } from 'preact/hooks';

/** What a browser does by itself and a kiosk must not: menus, dragging, pinching, zooming by wheel or keys, selecting. */
export function useLockedDown() {
  useEffect(() => {
    const refuse = (event: Event) => event.preventDefault();
    const refusePinch = (event: WheelEvent) => {
      if (event.ctrlKey || event.metaKey) event.preventDefault();
    };
    const refuseSecondFinger = (event: TouchEvent) => {
      if (event.touches.length > 1 && event.cancelable) event.preventDefault();
    };
    const kinds = ['contextmenu', 'dragstart', 'selectstart', 'gesturestart', 'dblclick'];
    for (const kind of kinds) document.addEventListener(kind, refuse);
    document.addEventListener('wheel', refusePinch, { passive: false });
    document.addEventListener('touchmove', refuseSecondFinger, { passive: false });
    document.documentElement.dataset.kiosk = '';
    return () => {
      for (const kind of kinds) document.removeEventListener(kind, refuse);
      document.removeEventListener('wheel', refusePinch);
      document.removeEventListener('touchmove', refuseSecondFinger);
      delete document.documentElement.dataset.kiosk;
    };
  }, []);
}
