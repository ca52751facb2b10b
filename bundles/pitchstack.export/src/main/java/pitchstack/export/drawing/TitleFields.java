// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.time.LocalDate;
import pitchstack.model.Positioner;
import pitchstack.model.TitleBlock;

/**
 * What the title block says (ISO 7200); an empty text where the file says nothing.
 *
 * @param owner legal owner
 * @param number identification number
 * @param revision revision index
 * @param issued date of issue
 * @param title title
 * @param supplement supplementary title
 * @param creator who drew it
 * @param approver who approved it
 * @param scale of the main view
 * @param unit of lengths; the sign of degrees for axes that are unrolled
 */
record TitleFields(String owner, String number, String revision, String issued, String title, String supplement,
        String creator, String approver, String scale, String unit) {
    static final String DOCUMENT_TYPE = "Fixture drawing";
    static final String LANGUAGE = "en";

    /**
     * The fields of a positioner.
     *
     * @param date the date of issue where the file gives none
     */
    static TitleFields of(Positioner positioner, String supplement, String scale, String unit,
            LocalDate date) {
        TitleBlock block = positioner.getTitleBlock();
        if (block == null) {
            return new TitleFields("", "", "", date.toString(), text(positioner.getTitle()), supplement, "", "", scale,
                    unit);
        }
        String issued = text(block.getIssued());
        return new TitleFields(text(block.getOwner()), text(block.getNumber()), text(block.getRevision()),
                issued.isBlank() ? date.toString() : issued, text(positioner.getTitle()), supplement,
                text(block.getCreator()), text(block.getApprover()), scale, unit);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
