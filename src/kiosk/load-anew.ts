/** Whether the page would come back: from the copy on the device, or over the network. */
async function wouldComeBack(): Promise<boolean> {
  if (navigator.serviceWorker?.controller) return true;
  try {
    return (await fetch('./index.html', { method: 'HEAD', cache: 'no-store' })).ok;
  } catch {
    return false;
  }
}

/** Loads the page anew unless that would leave an empty screen. @returns false when it would */
export async function loadAnew(): Promise<boolean> {
  if (!(await wouldComeBack())) return false;
  location.reload();
  return true;
}
