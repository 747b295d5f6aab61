import type { Choice } from "../basis/choices";
import type { Source } from "../basis/source";

/** A caution: one line that stands beside a number, and the text behind it. */
export interface Caution extends Choice {
  readonly line: string;
  readonly text: string;
  readonly source: Source;
}

const commonPractice = (title: string): Source => ({
  author: "The trade",
  year: "",
  title,
  where: "no single source",
  standing: "common practice",
});

const sellingTimber: Source = {
  author: "Georgia Forestry Commission",
  year: "2012",
  title: "Selling Your Timber",
  where: "electronic text, dlg.usg.edu; issuing body as its record has it",
  standing: "read",
};

/**
 * What an owner should hear before a number becomes a cut, a sale or a house. Wherever a local code, a licence or a
 * contract has a say, it comes before anything computed here.
 */
export const cautions: readonly Caution[] = [
  {
    title: "Estimate",
    aliases: ["Estimates", "Scale", "Appraisal"],
    line: "An estimate from a sample. Buyers' scale and a qualified appraisal decide payment.",
    text:
      "These figures come from the trees and logs you measured, by published rules, and carry the error of both. They " +
      "are neither a legal scale nor an appraisal. What is paid follows the contract, the buyer's scale and, where the " +
      "state asks for it, a licensed scaler or appraiser.",
    source: commonPractice("Estimates beside legal scale and appraisal"),
  },
  {
    title: "Felling",
    line: "Felling kills experienced people. Get training and gear, or hire it done.",
    text:
      "In the United States of 1980 to 1989 loggers died at work at more than 23 times the rate of all workers. Wear " +
      "head, eye, ear, hand, leg and foot protection, stay within sight or hearing of someone, and keep everyone else at " +
      "least two tree lengths away. Where federal or state logging rules apply to you, they come first.",
    source: {
      author: "National Institute for Occupational Safety and Health",
      year: "1995",
      title: "Publication 95-101; distances and gear: 29 CFR 1910.266",
      where: "cdc.gov/niosh/docs/95-101; 1910.266(d)(1) and (d)(6)",
      url: "https://www.cdc.gov/niosh/docs/95-101",
      standing: "read",
    },
  },
  {
    title: "Sawing",
    line: "Logs roll and blades cut. Check the machine's own limits and manual.",
    text:
      "A plan knows the log's measures, not its nails, rot or lean, nor what your mill can hold. Know what the log weighs " +
      "before you lift it: LOGWEIGHT tells. Chock the log, keep " +
      "guards closed, stop the engine before you touch the blade, and stand out of its line. Where the manual and a " +
      "plan differ, the manual is right.",
    source: {
      author: "Occupational Safety and Health Administration",
      year: "n.d.",
      title: "Sawmills, 29 CFR 1910.265",
      where: "log handling and band saws, 1910.265(e); the rest common practice",
      standing: "read",
    },
  },
  {
    title: "Log weight",
    aliases: ["Weight"],
    line: "A green log can weigh half a ton. Check what your lift, trailer and ramp may carry.",
    text:
      "Weights are reckoned from mean green densities, and a single log may be well heavier. Leave a margin, lift with " +
      "gear that is rated for it, and stay out from below and downhill of a log.",
    source: {
      author: "Forest Products Laboratory",
      year: "1952",
      title: "Technical Note 218",
      where: "weights from densities are approximate",
      url: "http://ufdc.ufl.edu/AA00026020/00001",
      standing: "read",
    },
  },
  {
    title: "Ungraded lumber",
    aliases: ["Lumber", "Building code"],
    line: "House framing usually needs graded, stamped lumber or a certificate; ask your code official first.",
    text:
      "Building codes commonly ask for a grade mark or a certificate from an accredited agency on load-bearing lumber. " +
      "Some states make room for native lumber, each on its own terms, and rules change. Nothing here says that a board " +
      "may carry a load: your local code official decides, and where one is required a licensed engineer.",
    source: {
      author: "American Wood Council",
      year: "n.d.",
      title:
        "FAQ: Can rough-sawn lumber be used for construction?; International Residential Code R502.1, R602.1, R802.1",
      where: "awc.org; the code as quoted at vbcoa.org",
      url: "https://awc.org",
      standing: "read",
    },
  },
  {
    title: "Forester",
    aliases: ["Foresters", "Marking"],
    line: "Before you sell or mark, talk with a forester; some states license or register them.",
    text:
      "A stand grows for decades on what is left in it, and a table of diameters does not see health, seed trees, soil " +
      "or wildlife. Georgia, for one, registers foresters. Ask your state forestry agency or extension office whom you " +
      "may hire, and what a plan or a permit must hold.",
    source: {
      author: "H. E. Stelzer; Georgia Forestry Commission",
      year: "n.d.; 2012",
      title: "University of Missouri Extension G5051; Selling Your Timber",
      where: "extension.missouri.edu/publications/g5051; dlg.usg.edu",
      url: "https://extension.missouri.edu/publications/g5051",
      standing: "read",
    },
  },
  {
    title: "Tax",
    aliases: ["Taxes"],
    line: "Before selling, ask a tax adviser about basis and how the sale is taxed.",
    text:
      "Standing timber, logs and lumber are taxed in different ways, and what the timber cost you may lower the tax. " +
      "No tax is reckoned here. Keep your cruise, your contract and your costs, and ask a qualified adviser before you sign.",
    source: sellingTimber,
  },
  {
    title: "Contracts and water",
    aliases: ["Contracts", "Water", "Boundaries"],
    line: "Know your lines, and your state's rules near streams, before cutting.",
    text:
      "Have boundaries settled before a tree is marked, by a licensed surveyor where they are in doubt. Put the sale in " +
      "writing. Cutting near streams and wetlands, roads, burning and endangered species may need a permit: the state " +
      "forestry agency knows the rules that apply to you.",
    source: commonPractice("Boundaries, written contracts and stream rules"),
  },
  {
    title: "Prices",
    aliases: ["Price"],
    line: "A price without a source and a date is a guess. Write down where yours come from.",
    text:
      "Invented prices show how the sheets work and nothing else; replace them. Price reports differ by region, rule, " +
      "quality and distance to the mill, and grow old within months. Bids for your own timber count for more than any report.",
    source: {
      author: "Penn State Extension",
      year: "n.d.",
      title: "Timber Market Report Methods",
      where: "regions, rules, low, average and high with the number of reports",
      url: "https://extension.psu.edu/timber-market-report-methods",
      standing: "read",
    },
  },
];
