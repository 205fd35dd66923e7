package hurdline.answer;

/**
 * Where an option's net present value is zero; a row of {@code break_even.csv}.
 *
 * @param input its path in the plant file
 * @param unit of the values; {@code x} where they are factors on what the file says
 * @param value where the mean net present value is zero; NaN where it is not in the range
 * @param from least value that was looked at
 * @param to greatest value
 * @param found whether there is one
 * @param inFile what the file says; not in the table
 * @param netPresentValue at what the file says; not in the table
 * @param low95 limit of the 95 % interval of the value; NaN where there is none; not in the table
 * @param high95 its other limit
 * @param valueAfterTax where the mean net present value after loan and tax is zero; NaN where it is
 *     nowhere, or the file has neither; in a table of its own, as is the last
 * @param netPresentValueAfterTax at what the file says; NaN where it has neither
 */
public record BreakEvenRow(
    String option,
    String input,
    String unit,
    double value,
    double from,
    double to,
    boolean found,
    double inFile,
    double netPresentValue,
    double low95,
    double high95,
    double valueAfterTax,
    double netPresentValueAfterTax) {}
