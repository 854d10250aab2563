/** Capitalised words of specifications that name no maker: parties, parts of documents, bodies, places and times. */
const noNames = new Set(
  `owner owners contractor contractors subcontractor architect engineer manufacturer manufacturers installer bidder
   bidders supplier suppliers producer vendor district board school state county city town government public authority
   the a an only this that these those any all each no not or and if in on at by of for to from with where when
   shall will may provide submit use furnish install supply tests test products product materials
   article articles section sections part parts table drawing drawings figure appendix schedule specification
   specifications contract documents division addendum work works project field site
   astm iso iec en din ansi aashto ieee nfhs ncaa fifa epa osha usda ada cfr us united states american society
   international standard standards european
   independent accredited certified approved qualified designated third party laboratory laboratories
   january february march april may june july august september october november december
   monday tuesday wednesday thursday friday saturday sunday
   type class grade portland proctor schedule level method category english metric imperial group phase
   performance results salient as per see refer none basis design note options`
    .split(/\s+/)
    .filter((word) => word !== ""),
);

/** Words of the trade that headings and defined terms are made of. */
const tradeWords = new Set(
  `synthetic artificial grass turf carpet surface surfaces surfacing system systems infill pile fibre fiber yarn backing seam
   shock pad layer base stone drainage water quality control assurance field fields sports athletic football soccer
   lacrosse hockey baseball softball rugby general execution examination preparation installation protection
   maintenance cleaning closeout submittals submittal action informational references definitions warranty warranties
   summary scope administrative requirements procedures temporary facilities substantial completion final acceptance
   notice proceed award bid bids form forms opening addenda change order request information substitution
   representative engineer's inspector superintendent foreman project manager record report reports data sheet
   method methods edition current impact advanced athlete life cycle cost equal north south east west new old
   total average maximum minimum highest lowest first second one two three four five yes high low
   instructions conditions supplementary special technical standards code codes law act rule rules regulation
   clause paragraph exhibit attachment volume chapter page line lines mark marks colour color green white yellow blue red
   black brown sand rubber silica crumb aggregate asphalt concrete soil earth portland urethane latex polyethylene
   exceptions taken make corrections noted submit specified item revise resubmit rejected reviewed review
   certificate payment application unit price allowance alternate progress meeting minutes punch list inspection
   safety manual operation operations training shop product period term working day days calendar plan plans related
   responsive responsible value best statement declaration interest request requests
   polypropylene polyamide nylon fahrenheit celsius fallback sunday saturday holiday`
    .split(/\s+/)
    .filter((word) => word !== ""),
);

/** Words that make a run of capitals a public body, a school, a place or a law rather than a maker. */
const publicWords = new Set(
  `school schools university college academy street avenue road county city district department ministry association
   federation alliance league conference council union commission agency act code law park stadium library code
   church hospital states state nations america canada europe patent trademark institute laboratory laboratories lab labs testing game`
    .split(/\s+/)
    .filter((word) => word !== ""),
);

export const isTradeWord = (key: string): boolean => tradeWords.has(key);
export const isPublicWord = (key: string): boolean => publicWords.has(key);

/** Whether a capitalised word may be the name of a firm or a product. */
export const isName = (key: string): boolean => key.length > 1 && !noNames.has(key);
