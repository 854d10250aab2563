const words = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== "");

/**
 * Words that say the same to a rule, so that a phrase holds however the writer puts it. A phrase names a class in braces:
 * “no other {firm} ~3 {supplies}”.
 */
export const wordClasses: Readonly<Record<string, readonly string[]>> = {
  /** Whoever bids, builds or sells. */
  firm: words(
    `manufacturer manufacturers maker makers producer producers supplier suppliers vendor vendors company companies firm
     firms bidder bidders contractor contractors subcontractor subcontractors installer installers distributor
     distributors dealer dealers fabricator fabricators business businesses outfit outfits builder builders`,
  ),
  /** Whoever makes or sells the product. */
  maker: words(
    `manufacturer manufacturers maker makers producer producers supplier suppliers vendor vendors company firm mill
     fabricator distributor distributors`,
  ),
  /** How a product comes about. */
  made: words(
    `made produced manufactured fabricated tufted woven extruded formulated blended milled coated bagged assembled
     finished molded moulded foamed engineered developed compounded processed grown sourced`,
  ),
  /** How a product gets to the buyer. */
  sold: words(
    `sold supplied furnished distributed marketed offered provided delivered obtained purchased
     bought procured ordered obtainable available carried stocked`,
  ),
  /** What a firm does with a product. */
  supplies: words(
    `supply supplies furnish furnishes provide provides offer offers make makes produce produces sell sells deliver
     delivers match matches manufacture manufactures has have carry carries install installs`,
  ),
  laboratory: words("laboratory laboratories lab labs institute"),
  /** What could stand for the thing described. */
  substitute: words(
    `substitution substitutions substitute substitutes alternate alternates alternative alternatives equal equals
     equivalent equivalents`,
  ),
  /** What is not done with a substitute. */
  taken: words(
    `accepted considered allowed permitted approved entertained reviewed evaluated honored honoured acknowledged
     answered received recognized recognised tolerated`,
  ),
  product: words(
    "product products system systems make makes brand brands material materials turf turfs carpet carpets source sources",
  ),
  /** Parts of a country, as far as a rule about place goes. */
  place: words("state county city district region area town commonwealth province country community metropolitan"),
  /** Where a firm sits. */
  seat: words(
    `office offices plant plants headquarters factory factories warehouse warehouses shop shops yard yards mill mills
     branch facility facilities recycler depot`,
  ),
  /** Who works there. */
  crew: words(
    `laborers labourers workers employees crew crews labor labour workforce installers mechanics apprentices personnel
     staff`,
  ),
  /** How a firm sits there. */
  sits: words(
    "located headquartered based domiciled incorporated resident registered established chartered situated maintaining",
  ),
};
