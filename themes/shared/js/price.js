// What the covering costs on this door with these picks: as much of it as the showroom shows.

import { element } from "./dom.js";
import { familyOf } from "./state.js";
import { _, say, tongue } from "./words.js";

/** What prices are worked out from; nothing where the showroom shows none in money. */
export function priceStock() {
  return Astragal.prices;
}

/**
 * A price that somebody named, in the showroom's currency.
 * @param {string} price as a visit keeps it: digits and a point
 */
export function namedPrice(price) {
  return Astragal.money ? Astragal.kernel.say_named(price, Astragal.money) : price;
}

/**
 * @param {Astragal.PriceLine} line
 * @param {Astragal.Money} money
 * @param {string} units
 */
function priceLine(line, money, units) {
  const { kernel } = Astragal;
  const amount = kernel.say_money(line.amount, money);
  const sum = kernel.say_phrase(kernel.price_sum(line, money), tongue(), units);
  return element("div", { class: "price-line" },
    element("p", {}, element("span", {}, say(line.name, units)), element("b", { class: "number" }, amount)),
    element("p", { class: "why" }, say(kernel.price_rule(line, money), units), sum !== amount && [element("br"), sum]));
}

/**
 * @param {Astragal.PricePart} part
 * @param {Astragal.Money} money
 * @param {string} units
 */
function pricePart({ caption, lines, amount }, money, units) {
  return element("section", { class: "price-part" }, element("h4", {}, say(caption, units)), lines.map((line) => priceLine(line, money, units)),
    element("p", { class: "price-total" }, element("span", {}, _("Total")), element("b", { class: "number" }, Astragal.kernel.say_money(amount, money))));
}

/**
 * @param {App} app
 * @param {Astragal.Configuration} one
 * @param {string} units
 * @param {boolean} opened whether the working is open
 * @returns {Child[]} nothing where nothing is shown
 */
export function priceTold(app, one, units, opened) {
  const { kernel } = Astragal;
  const stock = priceStock();
  const shown = stock ? kernel.shown_price(kernel.hung_pieces(app.ask.fit(one)), stock) : null;
  const level = kernel.price_words(familyOf(app.catalog, one), tongue());
  if (!stock || !shown || shown.says.text === "") {
    return level === "" ? [] : [element("h3", {}, _("Price")), element("p", {}, _("Price level: {level}", { level }))];
  }
  const parts = shown.parts.map((part) => pricePart(part, stock.terms.money, units));
  return [element("h3", {}, _("Price")), element("p", { class: "price-says" }, say(shown.says, units)),
    shown.terms.map((term) => element("p", { class: "note" }, say(term, units))),
    parts.length > 0 && element("details", { class: "more", open: opened }, element("summary", {}, _("How the price comes about")), parts)];
}
