# Random stratified, clustered, strip and two-phase samples, invented by a seeded generator, and what the package
# survey makes of them. Run once in an empty folder: Rscript survey.R. The tests read its files and need no R.
suppressMessages(library(survey))
set.seed(1907)
answers <- data.frame()
keep <- function(design, sample, quantity, value)
  answers <<- rbind(answers, data.frame(design, sample, quantity, value = sprintf("%.10g", value)))
heads <- c(
  paste0("# source: ", R.version.string, ", package survey ", packageVersion("survey"), ", script survey.R beside this file"),
  "# url: https://cran.r-project.org/package=survey",
  "# standing: computed"
)
store <- function(name, data, step, note) {
  lines <- c(heads, paste0("# printed to: ", step), paste0("# note: ", note))
  writeLines(lines, name)
  suppressWarnings(write.table(data, name, append = TRUE, sep = ",", row.names = FALSE, quote = FALSE))
}

strata <- clusters <- strips <- phases <- data.frame()
for (sample in 1:4) {
  # Strata of unequal acres, plots and spread; one of them all empty in the last sample
  acres <- round(runif(4, 3, 60), 1); plots <- sample(2:12, 4, replace = TRUE)
  one <- do.call(rbind, lapply(1:4, function(h) data.frame(sample, stratum = letters[h], acres = acres[h],
    value = round(pmax(0, rnorm(plots[h], 2000 * h, 900 * h)), 1))))
  if (sample == 4) one$value[one$stratum == "d"] <- 0
  strata <- rbind(strata, one)
  one$weight <- one$acres / ave(one$value, one$stratum, FUN = length)
  design <- svydesign(ids = ~1, strata = ~stratum, weights = ~weight, data = one)
  found <- svymean(~value, design)
  keep("strata", sample, "mean", coef(found)); keep("strata", sample, "standard error", SE(found))
  keep("strata", sample, "total", coef(svytotal(~value, design)))
  v <- (acres / sum(acres))^2 * tapply(one$value, one$stratum, var) / plots
  df <- sum(v)^2 / sum(v^2 / (plots - 1))
  keep("strata", sample, "degrees of freedom", df)
  limits <- confint(found, df = df); keep("strata", sample, "low", limits[1]); keep("strata", sample, "high", limits[2])

  # Clusters of unequal size, plots of one alike
  size <- sample(1:7, 9, replace = TRUE)
  one <- data.frame(sample, cluster = rep(1:9, size), value = round(rnorm(sum(size), rep(rnorm(9, 95, 30), size), 18), 1))
  clusters <- rbind(clusters, one)
  design <- svydesign(ids = ~cluster, weights = ~1, data = transform(one, weight = 1))
  found <- svymean(~value, design); limits <- confint(found, df = degf(design))
  keep("clusters", sample, "mean", coef(found)); keep("clusters", sample, "standard error", SE(found))
  keep("clusters", sample, "low", limits[1]); keep("clusters", sample, "high", limits[2])

  # Strips of unequal length
  acres <- round(runif(11, 0.4, 2.5), 2)
  one <- data.frame(sample, acres, trees = rpois(11, 70 * acres))
  strips <- rbind(strips, one)
  found <- svyratio(~trees, ~acres, svydesign(ids = ~1, weights = ~1, data = one))
  limits <- confint(found, df = 10)
  keep("strips", sample, "mean", coef(found)); keep("strips", sample, "standard error", SE(found))
  keep("strips", sample, "low", limits[1]); keep("strips", sample, "high", limits[2])

  # Two phases: a quick measure on all points, the full one on every third
  n1 <- 60; n2 <- 20
  quick <- rpois(n1, 7) * 10
  full <- round(pmax(0, 120 * quick + rnorm(n1, 0, 1500)), 0)
  one <- data.frame(sample, quick, full, measured = seq_len(n1) %in% sample(n1, n2))
  phases <- rbind(phases, transform(one, full = ifelse(measured, full, "")))
  one$id <- seq_len(n1)
  two <- twophase(id = list(~id, ~id), subset = ~measured, data = one, method = "full")
  line <- svymean(~full, calibrate(two, phase = 2, formula = ~quick))
  keep("two phases", sample, "regression mean", coef(line)); keep("two phases", sample, "regression error by survey", SE(line))
  through <- svytotal(~full, calibrate(two, phase = 2, formula = ~quick - 1, variance = 1))
  keep("two phases", sample, "ratio mean", coef(through) / n1)
  some <- one[one$measured, ]
  fit <- lm(full ~ quick, some)
  square <- function(residuals) sum(residuals^2) / (n2 - 1)
  error <- function(residuals) sqrt(var(some$full) / n1 + (1 - n2 / n1) * square(residuals) / n2)
  keep("two phases", sample, "regression standard error", error(resid(fit)))
  keep("two phases", sample, "slope", coef(fit)[2])
  keep("two phases", sample, "ratio standard error", error(resid(lm(full ~ quick - 1, some, weights = ifelse(quick > 0, 1 / quick, 0)))))
}
store("survey-strata.csv", strata, 0.1, "invented: plots of 4 samples, each of 4 strata")
store("survey-clusters.csv", clusters, 0.1, "invented: plots of 4 samples, each of 9 clusters")
store("survey-strips.csv", strips, 1, "invented: 4 samples, each of 11 strips with their acres and their trees")
store("survey-two-phases.csv", phases, 1, "invented: 4 samples, each of 60 points of which 20 were measured in full")
store("survey-answers.csv", answers, 0.000001, "ten figures; degrees of freedom, slope and the standard errors of two phases come from base R, the rest from survey")
