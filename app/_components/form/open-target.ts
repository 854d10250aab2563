/** Opens whatever hides the place that the address names, and goes there. A link inside the app does not by itself. */
export function openTarget(): void {
  const place = document.getElementById(placeNamed(location.hash));
  if (place === null) return;
  let wasHidden = false;
  for (let around = place.parentElement; around !== null; around = around.parentElement) {
    if (!(around instanceof HTMLDetailsElement) || around.open) continue;
    around.open = true;
    wasHidden = true;
  }
  if (wasHidden) place.scrollIntoView();
}

/** "#links.bid-a.grooming" → "links.bid-a.grooming"; as it stands where it is not written as an address should be. */
function placeNamed(hash: string): string {
  const name = hash.slice(1);
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
