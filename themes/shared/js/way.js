// The way from open to closed as one share, so that unlike coverings can stand at the same position.

import { numbersOf } from "./state.js";
import { fine, percent } from "./travel.js";
import { _ } from "./words.js";

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 */
export function shareOf(catalog, configuration) {
  return Astragal.kernel.share_at(numbersOf(catalog, configuration), configuration.place);
}

/** @param {number} share */
export function sayShare(share) {
  if (share <= 0) return _("open");
  return share >= 1 ? _("closed") : _("{share} closed", { share: percent(share) });
}

/**
 * @param {Astragal.PageCatalog} catalog
 * @param {Astragal.Configuration} configuration
 * @param {number} share
 */
export function placeAtShare(catalog, configuration, share) {
  const { lower, upper, tilt, coarse } = Astragal.kernel.position_at(numbersOf(catalog, configuration), share);
  return { lower: fine(lower), upper, tilt: fine(tilt), coarse };
}
