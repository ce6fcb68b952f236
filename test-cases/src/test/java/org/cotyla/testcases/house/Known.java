package org.cotyla.testcases.house;

/** How a value that a check holds against the protocol is known. */
public enum Known {
  /** It was read in the named source or in a published copy of it. */
  FOUND,
  /** It was worked out from a formula or figures that the named source gives. */
  DERIVED,
  /** It was remembered and still has to be looked up in the named source. */
  FROM_MEMORY,
  /** The trade does it so; no source is named for it. */
  COMMON_PRACTICE,
  /** The house has chosen it; another house may choose otherwise. */
  HOUSE_CHOICE
}
